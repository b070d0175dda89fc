package org.benchmetre.farm.irrigation.hydraulics;

/**
 * A lateral solved outlet by outlet, for comparison: from the far end back to the inlet, each piece of pipe with the flow it really
 * carries and the larger friction factor at its own Reynolds number, each outlet with the flow its own pressure gives. The pressure
 * of the last outlet is moved until the outlets have their rated pressure on average.
 */
final class Stepwise {

    private static final double GRAVITY = 9.80665;

    /**
     * One lateral, all lengths in m, flow in L/h, pressure in kPa, viscosity in m2/s.
     *
     * @param outlets how many
     * @param step spacing
     * @param shortfall what the first spacing is short of, 0 or 0.5
     * @param connection length of pipe that loses as much as one connection
     * @param diameter inner diameter
     * @param viscosity kinematic
     * @param flow of an outlet at the average pressure
     * @param pressure average pressure
     * @param exponent of pressure
     * @param slope rise for each metre
     */
    record Case(
            int outlets,
            double step,
            double shortfall,
            double connection,
            double diameter,
            double viscosity,
            double flow,
            double pressure,
            double exponent,
            double slope) {

        double reynolds() {
            return reynolds(outlets * flow / 3.6e6);
        }

        double reynolds(double cubicMetresPerSecond) {
            return 4 * cubicMetresPerSecond / (Math.PI * diameter * viscosity);
        }

        /** The same lateral with outlets that do not answer to pressure. */
        Case compensating() {
            return new Case(outlets, step, shortfall, connection, diameter, viscosity, flow, pressure, 0, slope);
        }

        /** The same lateral at another pressure on another slope. */
        Case at(double average, double newSlope) {
            return new Case(
                    outlets, step, shortfall, connection, diameter, viscosity, flow, average, exponent, newSlope);
        }
    }

    /** What the solution found: metres of water, kPa, L/h. */
    record Found(double friction, double inletPressure, double lowestPressure, double lowestFlow) {}

    private Stepwise() {}

    static Found solve(Case lateral) {
        double last = lateral.pressure();
        Profile profile = profile(lateral, last);
        for (int i = 0; i < 200 && Math.abs(profile.average - lateral.pressure()) > 1e-12 * lateral.pressure(); i++) {
            last += lateral.pressure() - profile.average;
            profile = profile(lateral, last);
        }
        if (!(Math.abs(profile.average - lateral.pressure()) <= 1e-9 * lateral.pressure())) {
            throw new IllegalStateException("No solution was found for " + lateral + ".");
        }
        double lowestFlow = lateral.flow() * Math.pow(profile.lowest / lateral.pressure(), lateral.exponent());
        return new Found(profile.friction, profile.inlet, profile.lowest, lowestFlow);
    }

    private record Profile(double inlet, double average, double lowest, double friction) {}

    private static Profile profile(Case c, double last) {
        double pressure = last;
        double sum = 0;
        double lowest = last;
        double flow = 0;
        double friction = 0;
        for (int outlet = c.outlets(); outlet >= 1; outlet--) {
            sum += pressure;
            lowest = Math.min(lowest, pressure);
            flow += c.flow() * Math.pow(Math.max(pressure, 0) / c.pressure(), c.exponent()) / 3.6e6;
            double length = c.step() * (outlet == 1 ? 1 - c.shortfall() : 1);
            double loss = loss(c, flow, length + c.connection());
            friction += loss;
            pressure += GRAVITY * (loss + c.slope() * length);
        }
        return new Profile(pressure, sum / c.outlets(), lowest, friction);
    }

    private static double loss(Case c, double flow, double length) {
        double velocity = 4 * flow / (Math.PI * c.diameter() * c.diameter());
        double reynolds = c.reynolds(flow);
        double factor = Math.max(64 / reynolds, 0.3164 / Math.pow(reynolds, 0.25));
        return factor * length / c.diameter() * velocity * velocity / (2 * GRAVITY);
    }
}
