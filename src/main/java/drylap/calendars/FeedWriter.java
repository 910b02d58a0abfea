package drylap.calendars;

import drylap.security.Secret;
import drylap.speech.Speech;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import net.fortuna.ical4j.data.CalendarOutputter;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.ComponentList;
import net.fortuna.ical4j.model.ParameterList;
import net.fortuna.ical4j.model.component.Standard;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.component.VTimeZone;
import net.fortuna.ical4j.model.parameter.Value;
import net.fortuna.ical4j.model.property.Description;
import net.fortuna.ical4j.model.property.DtEnd;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.DtStart;
import net.fortuna.ical4j.model.property.Geo;
import net.fortuna.ical4j.model.property.LastModified;
import net.fortuna.ical4j.model.property.Location;
import net.fortuna.ical4j.model.property.Name;
import net.fortuna.ical4j.model.property.ProdId;
import net.fortuna.ical4j.model.property.RefreshInterval;
import net.fortuna.ical4j.model.property.Sequence;
import net.fortuna.ical4j.model.property.Summary;
import net.fortuna.ical4j.model.property.TzId;
import net.fortuna.ical4j.model.property.TzOffsetFrom;
import net.fortuna.ical4j.model.property.TzOffsetTo;
import net.fortuna.ical4j.model.property.Uid;
import net.fortuna.ical4j.model.property.XProperty;
import net.fortuna.ical4j.model.property.immutable.ImmutableCalScale;
import net.fortuna.ical4j.model.property.immutable.ImmutableStatus;
import net.fortuna.ical4j.model.property.immutable.ImmutableVersion;

/** Writes entries as iCalendar. Times are in UTC: nothing recurs, so that no rule of a time zone is needed to read them. */
final class FeedWriter {
    private static final Duration ASK_AGAIN = Duration.ofHours(1);

    private FeedWriter() {}

    /** @param since when there was a calendar at all */
    static Feed write(Voice voice, List<Entry> entries, Instant since) {
        var calendar = head(voice, new Speech(voice.reading()).it("Crew {0}", voice.crew()));
        entries.forEach(entry -> calendar.add(event(entry)));
        // a calendar without any component would be none (RFC 5545, 3.6)
        if (entries.isEmpty()) calendar.add(utc());
        String text = Folding.fold(unfolded(calendar));
        Instant changed =
                entries.stream().map(Entry::changedAt).reduce(since, (one, other) -> one.isAfter(other) ? one : other);
        return new Feed(text, tag(text), changed);
    }

    private static Calendar head(Voice voice, String name) {
        var calendar = new Calendar();
        calendar.add(new ProdId("-//Drylap//Crew calendar//" + voice.language().toUpperCase(Locale.ROOT)));
        calendar.add(ImmutableVersion.VERSION_2_0);
        calendar.add(ImmutableCalScale.GREGORIAN);
        calendar.add(new Name(name));
        // the same for devices that do not know RFC 7986
        calendar.add(new XProperty("X-WR-CALNAME", name));
        calendar.add(new RefreshInterval(new ParameterList(List.of(Value.DURATION)), ASK_AGAIN));
        calendar.add(new XProperty("X-PUBLISHED-TTL", ASK_AGAIN.toString()));
        return calendar;
    }

    private static VEvent event(Entry entry) {
        Told told = entry.told();
        Instant changed = entry.changedAt().truncatedTo(ChronoUnit.SECONDS);
        var event = new VEvent(false);
        event.add(new Uid("urn:uuid:" + entry.uid()));
        event.add(new DtStamp(changed));
        event.add(new LastModified(changed));
        event.add(new Sequence(entry.sequence()));
        event.add(new DtStart<>(told.start()));
        event.add(new DtEnd<>(told.end()));
        event.add(new Summary(told.summary()));
        event.add(new Location(told.place()));
        event.add(new Geo(
                BigDecimal.valueOf(told.where().latitude()),
                BigDecimal.valueOf(told.where().longitude())));
        event.add(new Description(told.description()));
        event.add(entry.cancelledAt() == null ? ImmutableStatus.VEVENT_CONFIRMED : ImmutableStatus.VEVENT_CANCELLED);
        return event;
    }

    private static VTimeZone utc() {
        var standard = new Standard();
        standard.add(new DtStart<>(LocalDateTime.of(1970, 1, 1, 0, 0)));
        standard.add(new TzOffsetFrom(ZoneOffset.UTC));
        standard.add(new TzOffsetTo(ZoneOffset.UTC));
        var zone = new VTimeZone(new ComponentList<>(List.of(standard)));
        zone.add(new TzId("Etc/UTC"));
        return zone;
    }

    private static String unfolded(Calendar calendar) {
        var text = new StringWriter();
        try {
            new CalendarOutputter(true, Integer.MAX_VALUE).output(calendar, text);
        } catch (IOException never) {
            throw new UncheckedIOException("a string takes whatever is written", never);
        }
        return text.toString();
    }

    private static String tag(String text) {
        return Base64.getUrlEncoder().withoutPadding().encodeToString(Secret.sha256(text));
    }
}
