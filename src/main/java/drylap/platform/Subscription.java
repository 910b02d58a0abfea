package drylap.platform;

/** Something that goes on until it is closed; closing twice does nothing. */
@FunctionalInterface
public interface Subscription extends AutoCloseable {
    @Override
    void close();
}
