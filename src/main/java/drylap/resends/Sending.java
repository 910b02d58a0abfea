package drylap.resends;

/** A request with the sender's own key. */
public sealed interface Sending {
    /** It never came before: do it, and keep the answer in the same transaction. */
    record First() implements Sending {}

    /** It was answered before. */
    record Again(KeptAnswer answer) implements Sending {}

    /** The key came before, with another request. */
    record AnotherRequest() implements Sending {}
}
