package drylap.load;

import java.io.IOException;
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
        OpenPage opened = ground.ask().timed(kind, () -> OpenPage.at(browser, address, ""));
        page = opened;
        opened.follow(pushes::one);
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
