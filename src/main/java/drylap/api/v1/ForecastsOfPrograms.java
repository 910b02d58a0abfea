package drylap.api.v1;

import com.fasterxml.jackson.annotation.JsonInclude;
import drylap.api.BadField;
import drylap.api.BadFields;
import drylap.api.NotFound;
import drylap.forecasts.ForecastChoice;
import drylap.forecasts.ForecastChoiceResult;
import drylap.forecasts.ForecastChoices;
import drylap.forecasts.ForecastFiles;
import drylap.forecasts.ForecastReading;
import drylap.forecasts.KeptForecast;
import drylap.forecasts.KeptForecasts;
import drylap.forecasts.ReadForecast;
import drylap.kernel.SiteId;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.security.SignedIn;
import drylap.sites.Site;
import drylap.sites.Sites;
import jakarta.servlet.http.HttpServletRequest;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.http.InvalidMediaTypeException;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** By which forecast a site is planned; one of a program's own is brought in as the file that people bring in. */
@RestController
final class ForecastsOfPrograms {
    private static final MediaType CSV = new MediaType("text", "csv");

    private final Sites sites;
    private final ForecastChoices choices;
    private final ForecastFiles files;
    private final KeptForecasts kept;
    private final SignedIn signedIn;

    ForecastsOfPrograms(
            Sites sites, ForecastChoices choices, ForecastFiles files, KeptForecasts kept, SignedIn signedIn) {
        this.sites = sites;
        this.choices = choices;
        this.files = files;
        this.kept = kept;
        this.signedIn = signedIn;
    }

    /**
     * @param source where it comes from; {@code job-folder} where nobody chose
     * @param version rises with each choice
     * @param newest what was kept last of it; none: nothing was
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record ForecastAnswer(
            String site,
            String source,
            int version,
            @Nullable Newest newest) {}

    record Newest(Instant keptAt, Instant from, Instant until) {
        static Newest of(KeptForecast one) {
            var forecast = one.read().forecast();
            return new Newest(one.fetchedAt(), forecast.hours().getFirst().start(), forecast.end());
        }
    }

    @GetMapping("/api/v1/sites/{site}/forecast")
    ResponseEntity<ForecastAnswer> forecast(@PathVariable String site) {
        var who = signedIn.person();
        return Tags.answer(answer(who, open(who, site)));
    }

    @PutMapping("/api/v1/sites/{site}/forecast")
    ResponseEntity<ForecastAnswer> bring(
            @PathVariable String site, @RequestBody byte[] file, HttpServletRequest request) {
        var who = signedIn.person();
        var here = open(who, site);
        Tags.demand(request, answer(who, here));
        if (!isCsv(request.getContentType())) throw Refused.mediaType("the forecast is no text/csv; nothing was kept");
        ReadForecast read = read(files.look(who, here, file));
        return switch (files.use(who, here, read, choices.of(who, here.id()))) {
            case ForecastChoiceResult.Chosen _ -> Tags.answer(answer(who, here));
            case ForecastChoiceResult.Refused(var why) -> throw Refused.content(why.words(), List.of());
            case ForecastChoiceResult.ChangedMeanwhile _ ->
                throw Refused.stale("somebody chose another forecast since you read it; read it again");
        };
    }

    private Site open(Person who, String site) {
        if (site.isBlank()) throw new NotFound();
        var id = new SiteId(site);
        return Optional.of(id)
                .filter(one -> who.may(Operation.SEE_OPEN_HOURS, one))
                .flatMap(sites::newest)
                .orElseThrow(NotFound::new);
    }

    private ForecastAnswer answer(Person who, Site site) {
        ForecastChoice choice = choices.of(who, site.id());
        String source = choice.source() == null ? "job-folder" : choice.source().code();
        var newest = kept.newest(who, site.id(), 1).stream()
                .filter(one -> one.source() == choice.source())
                .findFirst()
                .map(Newest::of)
                .orElse(null);
        return new ForecastAnswer(site.id().value(), source, choice.version(), newest);
    }

    private static ReadForecast read(ForecastReading reading) {
        return switch (reading) {
            case ForecastReading.Read(var forecast) -> forecast;
            case ForecastReading.Refused(var problems, var _) ->
                throw new BadFields(problems.stream()
                        .map(one ->
                                new BadField(one.where(), "%s; accepted: %s".formatted(one.wrong(), one.accepted())))
                        .toList());
        };
    }

    private static boolean isCsv(@Nullable String type) {
        try {
            return type != null && CSV.isCompatibleWith(MediaType.parseMediaType(type));
        } catch (InvalidMediaTypeException none) {
            return false;
        }
    }
}
