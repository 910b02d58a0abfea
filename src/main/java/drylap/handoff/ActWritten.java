package drylap.handoff;

import drylap.kernel.FolderId;

/** An act was written down; told in its transaction, so that whoever listens either writes with it or keeps it from being. */
public record ActWritten(FolderId folder, HandoffAct act) {}
