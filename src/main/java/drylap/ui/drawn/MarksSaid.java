package drylap.ui.drawn;

import drylap.progress.MarkRequest;
import drylap.progress.MarkResult;
import drylap.speech.Speech;
import java.util.ArrayList;
import java.util.List;

/**
 * What became of several marks at once.
 *
 * @param refused those that could not be, each with its opening and the lap that speaks against it
 */
public record MarksSaid(String words, List<String> refused) {
    public static MarksSaid of(Speech say, List<MarkRequest> requests, List<MarkResult> results) {
        List<String> refused = new ArrayList<>();
        int marked = 0;
        int before = 0;
        for (int i = 0; i < requests.size(); i++) {
            String opening = requests.get(i).opening().value();
            switch (results.get(i)) {
                case MarkResult.Marked _ -> marked++;
                case MarkResult.AlreadyMarked _ -> before++;
                case MarkResult.Refused no -> refused.add(say.it("{0}: {1}", opening, no.saying()));
                case MarkResult.NotYours no -> refused.add(say.it("{0}: {1}", opening, no.saying()));
            }
        }
        String words = say.it("{0} marked", marked);
        if (before > 0) words += ", " + say.it("{0} already", before);
        if (!refused.isEmpty()) words += ", " + say.it("{0} not:", refused.size());
        return new MarksSaid(words, List.copyOf(refused));
    }
}
