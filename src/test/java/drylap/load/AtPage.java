package drylap.load;

import java.io.IOException;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Somebody who has a page open all the time and is told there of what changes. */
abstract class AtPage implements Worker {
    final Ground ground;
    final Browser browser;
    private final String name;
    private final Pushes pushes;
    private final Kind kind;
    private final String address;
    private @Nullable OpenPage page;

    AtPage(Ground ground, String name, Pushes pushes, Kind kind, String address) {
        this.ground = ground;
        this.name = name;
        this.pushes = pushes;
        this.kind = kind;
        this.address = address;
        browser = ground.browser();
    }

    @Override
    public final void comeIn() throws IOException, InterruptedException {
        SignIn.as(ground, browser, name);
        open();
    }

    /** None where it could not be opened. */
    final @Nullable OpenPage page() {
        return page;
    }

    final void open() throws IOException, InterruptedException {
        OpenPage opened = ground.ask().timed(kind, () -> drawn(OpenPage.at(browser, address, "")));
        page = opened;
        opened.follow(this::told);
    }

    /** A sheet is drawn once it has fetched its week. */
    private OpenPage drawn(OpenPage opened) throws IOException, InterruptedException {
        Optional<String> week = OpenPage.week(opened.shown());
        if (week.isPresent()) browser.packed(week.get()).good();
        return opened;
    }

    private void told(String message) {
        pushes.one(message);
        // a newer one may have come meanwhile, and then this one is gone
        OpenPage.week(message).ifPresent(week -> Thread.startVirtualThread(() -> fetch(week)));
    }

    private void fetch(String week) {
        try {
            ground.ask().judged(Kind.WEEK, () -> browser.packed(week), answer -> answer.status() != 200);
        } catch (IOException counted) {
            // it is in the table
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
    }

    final void openAnew() throws IOException, InterruptedException {
        leave();
        open();
    }

    @Override
    public final void leave() throws IOException, InterruptedException {
        OpenPage before = page;
        page = null;
        if (before != null) before.leave();
    }
}
