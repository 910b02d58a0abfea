package drylap.ui;

/** Each width in a class of its own, since they take minutes and two may run at once. */
@PageTest
class EveryScreenWideBrowserTests extends EveryScreen {
    EveryScreenWideBrowserTests() {
        super(1440);
    }
}
