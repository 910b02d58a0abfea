package drylap.planning;

import java.util.List;

/** Why a visit is where it is: the rules that its start waits for on that crew after its stop before, by their minutes. */
public record WhyThere(Visit visit, List<Bound> bounds) {
    public WhyThere {
        bounds = List.copyOf(bounds);
    }

    public List<Bound> binding() {
        return bounds.stream().filter(Bound::binds).toList();
    }
}
