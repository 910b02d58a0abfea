package drylap.ui.followon;

import drylap.ui.drawn.ApronSheet;
import drylap.ui.drawn.Aprons.LineToMark;
import drylap.ui.drawn.Aprons.Seen;

/** What the buttons of the screen of aprons do. */
interface Deeds {
    void accept(Seen seen);

    void mark(LineToMark line);

    /** Asks for the reason first. */
    void giveBack(ApronSheet sheet);
}
