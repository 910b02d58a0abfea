package drylap.platform;

/** The embedded PostgreSQL while an application of this folder runs it; it is left running. */
record RunningDatabase(int port) implements Database {
    @Override
    public String url() {
        return EmbeddedDatabase.urlOf(port);
    }

    @Override
    public String user() {
        return EmbeddedDatabase.USER;
    }

    @Override
    public String password() {
        return "";
    }

    @Override
    public boolean shared() {
        return true;
    }

    @Override
    public void close() {}
}
