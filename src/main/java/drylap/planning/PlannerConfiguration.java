package drylap.planning;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

@Configuration(proxyBeanMethods = false)
class PlannerConfiguration {
    @Bean
    Planner planner() {
        return Planner.standard();
    }
}
