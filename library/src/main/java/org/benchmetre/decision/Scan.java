package org.benchmetre.decision;

import java.util.ArrayList;
import java.util.List;

/** Goes along the points of a grid and gathers where the lesser side changes. Points that are not finite are left out before. */
final class Scan {

    private final List<Crossing> settled = new ArrayList<>();
    private final List<Bracket> brackets = new ArrayList<>();

    Scan(List<Point> points) {
        Point before = null;
        List<Point> same = new ArrayList<>();
        for (Point point : points) {
            if (point.lesser() == Lesser.NEITHER) {
                same.add(point);
            } else {
                settle(before, same, point);
                before = point;
                same.clear();
            }
        }
        settle(before, same, null);
    }

    /** Crossings known from the grid alone: ties, and single points where the sides are the same. */
    List<Crossing> settled() {
        return settled;
    }

    /** Neighbours on the grid between which the sign changes. */
    List<Bracket> brackets() {
        return brackets;
    }

    /** Settles what lies between two points with a lesser side, either of which may be missing at an end of the grid. */
    private void settle(Point before, List<Point> same, Point after) {
        Lesser below = lesser(before);
        Lesser above = lesser(after);
        boolean changes = before != null && after != null && below != above;
        boolean allTheSame = before == null && after == null;
        if (same.size() > 1) {
            if (!allTheSame) {
                settled.add(new Crossing.Tie(
                        same.get(0).value(), same.get(same.size() - 1).value(), below, above));
            }
        } else if (same.size() == 1 && (!changes || same.get(0).difference() == 0)) {
            Point root = same.get(0);
            settled.add(new Crossing.Root(root.value(), root.left(), root.right(), below, above));
        } else if (changes) {
            brackets.add(Bracket.of(before, after));
        }
    }

    private static Lesser lesser(Point point) {
        return point == null ? Lesser.UNKNOWN : point.lesser();
    }
}
