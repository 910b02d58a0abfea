package drylap.hooks;

import java.io.IOException;
import java.net.ConnectException;
import java.net.InetAddress;
import java.net.SocketTimeoutException;
import java.net.URI;
import java.net.UnknownHostException;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.Arrays;
import javax.net.ssl.SSLException;
import org.apache.hc.client5.http.DnsResolver;
import org.apache.hc.client5.http.SystemDefaultDnsResolver;
import org.apache.hc.client5.http.classic.methods.HttpPost;
import org.apache.hc.client5.http.config.ConnectionConfig;
import org.apache.hc.client5.http.config.RequestConfig;
import org.apache.hc.client5.http.impl.classic.CloseableHttpClient;
import org.apache.hc.client5.http.impl.classic.HttpClients;
import org.apache.hc.client5.http.impl.io.PoolingHttpClientConnectionManagerBuilder;
import org.apache.hc.core5.http.ContentType;
import org.apache.hc.core5.http.io.entity.StringEntity;
import org.apache.hc.core5.util.Timeout;
import org.springframework.stereotype.Service;

/**
 * Sends one delivery once. The client connects to the very address that was looked at when the name was resolved, follows no redirect, keeps no
 * cookie and asks not again by itself.
 */
@Service
final class Sender implements AutoCloseable {
    /** Names the delivery: sent again, it is the same. */
    static final String DELIVERY = "Drylap-Delivery";

    /** When it was sent, in seconds since 1970. */
    static final String SENT_AT = "Drylap-Sent-At";

    static final String SIGNATURE = "Drylap-Signature";

    private final HookSettings settings;
    private final Clock clock;
    private final CloseableHttpClient http;

    Sender(HookSettings settings, Clock clock) {
        this.settings = settings;
        this.clock = clock;
        http = client(settings);
    }

    /** What came of it: taken where the answer was 2xx. */
    record Outcome(boolean taken, String words) {}

    Outcome send(Delivery delivery, URI url, String secret) {
        var against = HookAddress.against(url.toString(), settings.insideAllowed());
        if (against.isPresent()) return new Outcome(false, against.get().words());
        try {
            int status = http.execute(request(delivery, url, secret), response -> response.getCode());
            return new Outcome(status / 100 == 2, TryWords.ANSWERED.with(status).words());
        } catch (NotPublic inside) {
            return new Outcome(false, String.valueOf(inside.getMessage()));
        } catch (UnknownHostException unknown) {
            return failed(TryWords.UNKNOWN, url);
        } catch (SocketTimeoutException slow) {
            return failed(TryWords.SLOW, url);
        } catch (ConnectException closed) {
            return failed(TryWords.CLOSED, url);
        } catch (SSLException unbelieved) {
            return failed(TryWords.NO_CERTIFICATE, url);
        } catch (IOException failure) {
            return failed(TryWords.BROKE_OFF, url);
        }
    }

    private static Outcome failed(TryWords how, URI url) {
        return new Outcome(false, how.with(String.valueOf(url.getHost())).words());
    }

    private HttpPost request(Delivery delivery, URI url, String secret) {
        var request = new HttpPost(url);
        String at = String.valueOf(clock.instant().getEpochSecond());
        request.setHeader(DELIVERY, delivery.id().toString());
        request.setHeader(SENT_AT, at);
        request.setHeader(SIGNATURE, Signature.of(secret, at, delivery.body()));
        request.setEntity(
                new StringEntity(delivery.body(), ContentType.APPLICATION_JSON.withCharset(StandardCharsets.UTF_8)));
        return request;
    }

    private static CloseableHttpClient client(HookSettings settings) {
        Timeout whole = Timeout.of(settings.whole());
        var connections = PoolingHttpClientConnectionManagerBuilder.create()
                .setDnsResolver(new Resolver(settings.insideAllowed()))
                .setDefaultConnectionConfig(ConnectionConfig.custom()
                        .setConnectTimeout(Timeout.of(settings.connect()))
                        .setSocketTimeout(whole)
                        .build())
                .setMaxConnTotal(DueDeliveries.MOST_AT_A_TIME)
                .setMaxConnPerRoute(DueDeliveries.MOST_AT_A_TIME)
                .build();
        return HttpClients.custom()
                .setConnectionManager(connections)
                .setDefaultRequestConfig(RequestConfig.custom()
                        .setResponseTimeout(whole)
                        .setRedirectsEnabled(false)
                        .build())
                .setConnectionReuseStrategy((_, _, _) -> false)
                .disableRedirectHandling()
                .disableAutomaticRetries()
                .disableCookieManagement()
                .disableAuthCaching()
                .setUserAgent("Drylap")
                .build();
    }

    private static final class NotPublic extends UnknownHostException {
        NotPublic(String host, InetAddress address) {
            super(TryWords.INSIDE
                    .with(host, String.valueOf(address.getHostAddress()))
                    .words());
        }
    }

    /** A name of which one address is inside is not believed in the others either. */
    private record Resolver(boolean insideAllowed) implements DnsResolver {
        @Override
        public InetAddress[] resolve(String host) throws UnknownHostException {
            InetAddress[] all = SystemDefaultDnsResolver.INSTANCE.resolve(host);
            if (insideAllowed) return all;
            for (InetAddress one : all) if (!PublicAddress.is(one)) throw new NotPublic(host, one);
            return Arrays.copyOf(all, all.length);
        }

        @Override
        public String resolveCanonicalHostname(String host) throws UnknownHostException {
            return SystemDefaultDnsResolver.INSTANCE.resolveCanonicalHostname(host);
        }
    }

    @Override
    public void close() throws IOException {
        http.close();
    }
}
