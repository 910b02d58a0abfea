package drylap;

import com.vaadin.flow.component.page.AppShellConfigurator;
import com.vaadin.flow.component.page.Push;
import com.vaadin.flow.server.AppShellSettings;
import drylap.cli.Application;
import drylap.cli.Commands;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

@Push
@SpringBootApplication
public class Drylap implements AppShellConfigurator {
    public static void main(String[] args) {
        var commands = new Commands(Drylap::start);
        int exitCode = commands.run(args);
        // A started application goes on after main; only headless commands end the process.
        if (!commands.applicationStarted()) System.exit(exitCode);
    }

    /** Spring has said on the console why it could not start; what is left to do is to end with a fault. */
    private static void start(Application.Node node, String... settings) {
        try {
            switch (node) {
                case WEB -> SpringApplication.run(Drylap.class, settings);
                case WORKER -> Worker.run(settings);
            }
        } catch (RuntimeException reported) {
            System.exit(1);
        }
    }

    @Override
    public void configurePage(AppShellSettings settings) {
        settings.addFavIcon("icon", "favicon.svg", "any");
    }
}
