package drylap.ui.shell;

import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.Run;

/** A screen about the folder on the table; it is told again whenever that or its plan changes. */
public interface FolderView {
    void show(FolderShown shown);

    default void show(Run run) {}
}
