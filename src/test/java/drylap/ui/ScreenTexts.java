package drylap.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.dom.Element;
import drylap.ui.components.WeekSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Everything on the open page that somebody reads or hears: text, labels, hints, and the words given to drawings; not what is marked as English. */
public final class ScreenTexts {
    private static final List<String> READ = List.of(
            "label",
            "aria-label",
            "accessibleName",
            "placeholder",
            "title",
            "helperText",
            "errorMessage",
            "headerTitle",
            "accessible-name",
            "alt",
            "emptySelectionCaption",
            "hint",
            "caption");
    /** Of the records that drawings are given, what is to be read. */
    private static final Pattern IN_RECORD = Pattern.compile(
            "\"(?:words|progress|title|heading|label|weekday|trade|idle|dueWords|place|name)\"\\s*:\\s*\"((?:[^\"\\\\]|\\\\.)*)\"");

    private static final Pattern LISTED_IN_RECORD = Pattern.compile("\"words\"\\s*:\\s*\\[([^\\]]*)\\]");
    private static final Pattern IN_DRAWING = Pattern.compile("<(?:text|title|desc)[^>]*>([^<]+)<");

    private static final Set<String> RECORDS = Set.of("glyph", "wall", "strip", "run", "odds", "season");
    private static final Set<String> DRAWINGS = Set.of("wide", "tall");

    private final List<String> texts = new ArrayList<>();

    private ScreenTexts() {}

    public static List<String> now() {
        return of(UI.getCurrent());
    }

    public static List<String> of(Component screen) {
        var all = new ScreenTexts();
        all.read(screen.getElement());
        return all.texts;
    }

    private void read(Element element) {
        if (element.isTextNode()) {
            note(element.getText());
            return;
        }
        if (!element.isVisible() || isKeptInEnglish(element)) return;
        for (String name : READ) {
            note(element.getAttribute(name));
            note(element.getProperty(name));
        }
        for (String name : RECORDS) {
            var record = element.getPropertyRaw(name);
            if (record != null) noteRecord(record.toString());
        }
        element.getComponent()
                .filter(WeekSheet.class::isInstance)
                .map(sheet -> ((WeekSheet) sheet).week())
                .ifPresent(week -> noteRecord(week.json()));
        for (String name : DRAWINGS) {
            String drawing = element.getProperty(name);
            if (drawing != null)
                IN_DRAWING
                        .matcher(drawing)
                        .results()
                        .forEach(one -> note(one.group(1).replaceAll("&[a-z0-9#]+;", "")));
        }
        element.getChildren().forEach(this::read);
        element.getNode()
                .getFeatureIfInitialized(com.vaadin.flow.internal.nodefeature.VirtualChildrenList.class)
                .ifPresent(list -> list.forEachChild(node -> read(Element.get(node))));
    }

    /** Such as a line of the history; links to what is English are read. */
    private static boolean isKeptInEnglish(Element element) {
        return element.getTag().equals("span") && "en".equals(element.getAttribute("lang"));
    }

    private void noteRecord(String record) {
        IN_RECORD.matcher(record).results().forEach(one -> note(one.group(1)));
        LISTED_IN_RECORD.matcher(record).results().forEach(one -> note(one.group(1)));
    }

    private void note(@Nullable String text) {
        if (text != null && !text.isBlank()) texts.add(text);
    }
}
