package drylap.planning;

/** What came of publishing. */
public sealed interface PublishResult {
    record Published(Publication publication) implements PublishResult {}

    /** Someone else published since the person looked; nothing was published now. */
    record PublishedMeanwhile(Publication newer) implements PublishResult {}
}
