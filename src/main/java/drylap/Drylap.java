package drylap;

import com.vaadin.flow.component.page.AppShellConfigurator;
import com.vaadin.flow.component.page.Push;
import drylap.cli.Commands;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

@Push
@SpringBootApplication
public class Drylap implements AppShellConfigurator {
    public static void main(String[] args) {
        var commands = new Commands(settings -> SpringApplication.run(Drylap.class, settings));
        int exitCode = commands.run(args);
        // A started application goes on after main; only headless commands end the process.
        if (!commands.applicationStarted()) System.exit(exitCode);
    }
}
