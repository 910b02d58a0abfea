package drylap.forecasts;

import drylap.forecasts.fetching.Answer;
import drylap.forecasts.fetching.Sources;
import drylap.kernel.SiteId;
import drylap.platform.News;
import drylap.platform.NewsItem;
import drylap.sites.Site;
import drylap.sites.Sites;
import java.time.Clock;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/** One go at a site's source: asked outside of any transaction, kept and written down in one. */
@Service
final class ForecastFetching {
    private final ForecastChoices choices;
    private final Sites sites;
    private final Sources sources;
    private final FetchBook book;
    private final KeptForecasts kept;
    private final TransactionTemplate transaction;
    private final News news;
    private final Clock clock;

    ForecastFetching(
            ForecastChoices choices,
            Sites sites,
            Sources sources,
            FetchBook book,
            KeptForecasts kept,
            TransactionTemplate transaction,
            News news,
            Clock clock) {
        this.choices = choices;
        this.sites = sites;
        this.sources = sources;
        this.book = book;
        this.kept = kept;
        this.transaction = transaction;
        this.news = news;
        this.clock = clock;
    }

    /** Nothing happens where no source is chosen, or the source asked to be left alone. */
    void fetch(SiteId id) throws InterruptedException {
        ForecastChoice choice = choices.of(id).orElse(null);
        if (choice == null
                || choice.source() == null
                || !choice.source().fetched()
                || book.leftAlone(id, clock.instant())) return;
        Optional<Site> site = sites.newest(id);
        Answer answer = site.isEmpty()
                ? new Answer.None(ForecastWords.NO_SITE.with(id), false, null)
                : sources.ask(choice.source(), site.get(), choice.cell(), book.stamp(id));
        transaction.executeWithoutResult(_ -> {
            // a choice that was made meanwhile begins anew
            if (!choices.of(id).equals(Optional.of(choice))) return;
            write(choice, site.orElse(null), answer, clock.instant());
            news.tell(new NewsItem(ForecastChoices.TOPIC, 0, id.value(), "fetched"));
        });
    }

    private void write(ForecastChoice choice, @Nullable Site site, Answer answer, Instant now) {
        switch (answer) {
            case Answer.None none -> book.unanswered(choice, none, now);
            case Answer.Unchanged(var stamp) ->
                book.ended(choice, FetchOutcome.UNCHANGED, ForecastWords.STILL_HOLDS.with(), stamp, now);
            case Answer.Whole(var bytes, var stamp) -> read(choice, Objects.requireNonNull(site), bytes, stamp, now);
        }
    }

    private void read(ForecastChoice choice, Site site, byte[] bytes, Answer.Stamp stamp, Instant now) {
        ForecastSource source = Objects.requireNonNull(choice.source());
        switch (ForecastReader.of(source).read(bytes, site)) {
            case ForecastReading.Refused refused -> book.refused(choice, refused.summary(), now);
            case ForecastReading.Read(var forecast) -> {
                boolean fresh = kept.keep(source, site, forecast, now);
                String words =
                        ForecastWords.HOURS.with(forecast.forecast().hours().size());
                if (fresh) book.ended(choice, FetchOutcome.FETCHED, words, stamp, now);
                else book.ended(choice, FetchOutcome.UNCHANGED, ForecastWords.CAME_AGAIN.with(), stamp, now);
            }
        }
    }
}
