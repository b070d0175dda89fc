package org.benchmetre.farm.irrigation.hydraulics;

import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.Formula;
import org.benchmetre.budget.unit.Unit;

/**
 * Friction in a full smooth round pipe by Darcy and Weisbach.
 *
 * <pre>
 * h  = f (L/d) v² / (2 g)          v = Q / (pi d²/4)          Re = v d / nu
 * f  = the larger of 64/Re (Hagen and Poiseuille) and 0.3164 Re^-0.25 (Blasius 1913)
 * h  friction, m of water    f  friction factor    L  length    d  inner diameter    v  mean velocity
 * Q  flow                    Re Reynolds number    nu kinematic viscosity            g  9.80665 m/s²
 * </pre>
 *
 * The larger of the two factors is continuous and on the safe side where flow is neither laminar nor turbulent; above Re 100,000
 * Blasius gives too little.
 */
public final class PipeLoss {

    private static final Unit SPEED = Unit.parse("m/s");
    private static final Unit HEAD = Unit.parse("mH2O");
    private static final Unit PRESSURE = Unit.parse("kPa");
    private static final Formula GRAVITY = number(9.80665, Unit.parse("m/s2"));

    private PipeLoss() {}

    /** Open area of a pipe, in the square of the unit of its diameter. */
    static Formula area(Formula diameter) {
        return number(Math.PI / 4, ONE).times(diameter.power(number(2, ONE)));
    }

    /**
     * Mean velocity: flow over the open area of a pipe.
     *
     * @param flow in any unit of volume over time
     * @param diameter inner diameter in any unit of length, above 0
     * @return in m/s
     */
    public static Formula velocity(Formula flow, Formula diameter) {
        return flow.over(area(diameter)).in(SPEED);
    }

    /**
     * Reynolds number: velocity times diameter over kinematic viscosity.
     *
     * @param velocity mean velocity
     * @param diameter inner diameter
     * @param viscosity kinematic viscosity, above 0
     * @return a plain number
     */
    public static Formula reynolds(Formula velocity, Formula diameter, Formula viscosity) {
        return velocity.times(diameter).over(viscosity).in(ONE);
    }

    /**
     * Friction factor, the larger of the laminar and the turbulent one.
     *
     * @param reynolds Reynolds number, up to 100,000; above it the factor is too small
     * @return a plain number; 0 in a pipe without flow
     */
    public static Formula factor(Formula reynolds) {
        Formula laminar = number(64, ONE).over(reynolds);
        return when(reynolds.isPositive(), greater(laminar, turbulentFactor(reynolds)), none(ONE));
    }

    /** Friction factor of turbulent flow in a smooth pipe; the Reynolds number is above 0. */
    static Formula turbulentFactor(Formula reynolds) {
        return number(0.3164, ONE).over(reynolds.power(number(0.25, ONE)));
    }

    /** Metres of water lost in a metre of pipe by turbulent flow; velocity in m/s, diameter in m. */
    static Formula turbulentGradient(Formula reynolds, Formula velocity, Formula diameter) {
        return turbulentFactor(reynolds)
                .times(velocity)
                .times(velocity)
                .over(number(2, ONE).times(GRAVITY).times(diameter));
    }

    /** Metres of water lost in a metre of pipe by laminar flow, 64/Re put in; viscosity in m2/s, velocity in m/s, diameter in m. */
    static Formula laminarGradient(Formula viscosity, Formula velocity, Formula diameter) {
        return number(32, ONE)
                .times(viscosity)
                .times(velocity)
                .over(GRAVITY.times(diameter).times(diameter));
    }

    /**
     * Pressure lost, all the flow running the whole length.
     *
     * @param factor friction factor
     * @param length of the pipe
     * @param diameter inner diameter, above 0
     * @param velocity mean velocity in m/s
     * @return in kPa
     */
    public static Formula pressure(Formula factor, Formula length, Formula diameter, Formula velocity) {
        Formula speedHead = velocity.power(number(2, ONE)).over(number(2, ONE).times(GRAVITY));
        return factor.times(length.over(diameter).in(ONE))
                .times(speedHead)
                .counting(HEAD)
                .in(PRESSURE);
    }
}
