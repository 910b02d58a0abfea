package drylap.ui.planner;

import drylap.planning.HandResult;
import drylap.speech.Speech;
import drylap.ui.shell.TroubleLine;

/** Sends what somebody put in by hand, and says what is wrong with it where something is. */
final class HandForm {
    /** Reads the fields and sends what is in them. */
    @FunctionalInterface
    interface Sender {
        HandResult send() throws WrongField;
    }

    private HandForm() {}

    static void send(Speech say, TroubleLine trouble, Runnable saved, Sender sender) {
        try {
            switch (sender.send()) {
                case HandResult.Refused(var why) -> trouble.say(say.it(why) + ".");
                case HandResult.Saved _ -> saved.run();
            }
        } catch (WrongField wrong) {
            trouble.say(say.it(wrong.said()));
        }
    }
}
