package drylap.forecasts;

import drylap.forecasts.fetching.Sources;
import java.time.Clock;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

@Configuration(proxyBeanMethods = false)
@EnableConfigurationProperties(ForecastSettings.class)
class ForecastConfiguration {
    @Bean
    Sources forecastSources(ForecastSettings settings, Clock clock) {
        return new Sources(settings, clock);
    }
}
