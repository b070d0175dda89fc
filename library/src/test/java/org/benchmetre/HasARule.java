package org.benchmetre;

import java.util.EnumSet;
import java.util.Set;
import org.benchmetre.budget.Call;
import org.benchmetre.budget.Constant;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Fold;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Function;
import org.benchmetre.budget.Gather;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Lookup;
import org.benchmetre.budget.Previous;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.Walk;
import org.benchmetre.budget.unit.Unit;

/** Whether a formula is more than plain arithmetic of lines: it has a number of its own, a power, a logarithm, or interest. */
record HasARule() implements Walk<Boolean> {

    private static final Set<Function> RULES = EnumSet.of(Function.POWER, Function.EXP, Function.LN, Function.RECOVERY);

    /** How far a number times its unit may be from one and still be a conversion: the last digits of a double. */
    private static final double LAST_DIGITS = 1e-15;

    @Override
    public Boolean line(Line line) {
        return false;
    }

    @Override
    public Boolean constant(Constant constant) {
        boolean plain = constant.kind() == Kind.TEXT || constant.number() == 0 || constant.isOne();
        return !plain && !isConversion(constant);
    }

    /** As many of one unit as make one of the other: 1000 mm/m, 24 h/d. */
    private static boolean isConversion(Constant constant) {
        Unit unit = constant.unit();
        return unit.isPure()
                && Math.abs(constant.number() * unit.factorTo(Unit.ONE).toDouble() - 1) <= LAST_DIGITS;
    }

    @Override
    public Boolean call(Call call) {
        if (call.function() == Function.SHOWN) {
            return found(call.arguments().get(0));
        }
        return RULES.contains(call.function()) || call.arguments().stream().anyMatch(this::found);
    }

    @Override
    public Boolean fold(Fold fold) {
        boolean overTime = fold.gather() == Gather.PRESENT_VALUE || fold.gather() == Gather.RATE_OF_RETURN;
        return overTime || fold.tag() != null && found(fold.tag());
    }

    @Override
    public Boolean lookup(Lookup lookup) {
        return found(lookup.key());
    }

    @Override
    public Boolean element(Element element) {
        return false;
    }

    @Override
    public Boolean previous(Previous previous) {
        return found(previous.initial());
    }

    @Override
    public Boolean rows(Rows rows) {
        return rows.formulas().stream().anyMatch(this::found);
    }

    private boolean found(Formula formula) {
        return formula.walk(this);
    }
}
