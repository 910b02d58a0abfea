package drylap.ui.planner;

import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import drylap.kernel.OpeningId;
import drylap.sites.Facade;
import drylap.speech.Saying;
import drylap.speech.Speech;
import drylap.ui.drawn.FolderShown;
import drylap.whatif.Change;
import drylap.whatif.DelayDelivery;

/** Windows that come later: those of a wall, or one. */
final class DeliveryFields extends ChangeFields {
    private static final int MOST_DAYS = 365;

    private final Select<Facade> wall = select(say.it("Windows of"));
    private final TextField opening = new TextField(say.it("Only opening"));
    private final TextField days = new TextField(say.it("Days later"));

    DeliveryFields(Speech say) {
        super(say);
        opening.setHelperText(say.it("blank: the whole wall"));
        add(wall, opening, days);
    }

    @Override
    void offer(FolderShown shown) {
        fill(wall, shown.folder().facades(), facade -> shown.title(facade.id()));
    }

    @Override
    Change read(FolderShown shown) throws WrongField {
        Facade facade = chosen(wall);
        int later = whole(days, 1, MOST_DAYS);
        String only = opening.getValue().strip();
        if (only.isEmpty()) return new DelayDelivery(facade.id(), null, later);
        boolean there = shown.folder().openings().stream()
                .anyMatch(one -> one.id().value().equals(only) && one.facade().equals(facade.id()));
        if (!there)
            throw new WrongField(
                    opening.getLabel(),
                    Saying.of("{0} has no opening ''{1}''", shown.title(facade.id()), only),
                    Saying.of("one of that wall, or nothing for all of it"));
        return new DelayDelivery(null, new OpeningId(only), later);
    }
}
