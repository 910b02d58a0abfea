package drylap.load;

import java.io.IOException;
import java.util.Random;
import java.util.UUID;

/** Somebody of the trade that follows, with the aprons open: takes released openings over, or gives one back. */
final class FollowOn extends AtPage {
    private static final double GIVES_BACK = 0.2;
    private static final int CHANGED_MEANWHILE = 412;
    private static final int NOT_NOW = 409;

    FollowOn(Ground ground, String name, Pushes pushes) {
        super(ground, name, pushes, Kind.APRONS, "aprons");
    }

    @Override
    public void act(Random draw) throws IOException, InterruptedException {
        openAnew();
        String opening = ground.released().poll();
        if (opening == null) read(ground.anyOpening(draw));
        else decide(opening, draw.nextDouble() < GIVES_BACK);
    }

    private Browser.Answer read(String opening) throws IOException, InterruptedException {
        return ground.ask()
                .timed(Kind.READ_OPENING, () -> browser.get(path(opening)).good());
    }

    private String path(String opening) {
        return "/api/v1/folders/%d/openings/%s".formatted(ground.folder(), opening);
    }

    private void decide(String opening, boolean back) throws IOException, InterruptedException {
        String etag = read(opening).etag();
        String path = path(opening) + (back ? "/returns" : "/acceptances");
        String body = back ? "{\"reason\":\"not-clean\"}" : "{}";
        ground.ask()
                .judged(
                        Kind.TAKE_OVER,
                        () -> decided(browser.post(
                                path,
                                body,
                                "If-Match",
                                etag,
                                "Idempotency-Key",
                                UUID.randomUUID().toString())),
                        answer -> answer.status() != 200);
    }

    private static Browser.Answer decided(Browser.Answer answer) throws IOException {
        boolean trade = answer.status() == CHANGED_MEANWHILE || answer.status() == NOT_NOW;
        return trade ? answer : answer.good();
    }
}
