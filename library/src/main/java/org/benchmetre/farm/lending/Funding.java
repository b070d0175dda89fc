package org.benchmetre.farm.lending;

import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.farm.input.TradeUnits.MONEY;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.ArrayList;
import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.finance.StartUp;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.FundKind;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.loans.Loans;
import org.benchmetre.farm.loans.Uses;
import org.benchmetre.farm.ownership.OwnershipRates;

/**
 * Uses and sources of funds at the start. Uses are all that is paid before the first month of the cash: parts in whole packs, what
 * {@code funds.csv} lists, installing, plants, what loans and insurance cost while building, and the cash that the first months need.
 * Sources are loans, grants and the owner's money; one of them balances ({@link Balancing}), so that uses are sources whatever is entered.
 */
public final class Funding {

    private static final Unit NOMINAL = Unit.MONEY_NOMINAL;
    private static final String AT_START = "money of the start is money of today";
    private static final double TWO = 2;

    /** What the start takes, money of the start. */
    public final Line total;
    /** Of that, cash kept for the first months. */
    public final Line workingCapital;
    /** What each loan brings, along the loans. */
    public final Line loanAmount;
    /** What all loans bring. */
    public final Line loansTotal;
    /** What the owner brings. */
    public final Line owner;
    /** Grants. */
    public final Line grants;
    /** Of what is used, plants. */
    final Line plants;
    /** Land, which does not wear. */
    final Line land;
    /** 1 for the loan that balances, along the loans. */
    final Line isBalancing;
    /** How many loans balance: 0 where the owner does. */
    final Line balancing;
    /** Rows of uses. */
    final Axis axis;
    /** What each row takes. */
    final Line amount;
    /** What each row is called. */
    final Line label;
    /** What the owner entered. */
    final Line ownerEntered;

    private final ScheduleBuilder single;

    /**
     * What is paid at the start.
     *
     * @param startUp parts in whole packs, installing, plants, lumps
     * @param house house by area, money
     * @param parts parts by kind
     * @param uses rows of {@code funds.csv}
     * @param rates of insurance
     */
    record Start(StartUp startUp, Line house, PartsByKind parts, Uses uses, OwnershipRates rates) {}

    private record Use(String key, Formula label, Formula amount) {
        Use(String key, String label, Formula amount) {
            this(key, text(label), amount);
        }
    }

    Funding(BudgetBuilder b, FarmEntries entries, Loans loans, Start start) {
        ScheduleBuilder e = b.schedule(Sheets.LENDING, "What the start takes beside what is bought");
        single = b.schedule(Sheets.LENDING, "Funds in total");
        Line months = entries.add(e.entry("building_months", "Months of building before the start", Unit.parse("mo"))
                .from(0, 60));
        Line working = entries.add(e.entry("working_capital", "Cash kept for the first months", MONEY)
                .from(0, 1e9));
        ownerEntered = entries.add(
                e.entry("owner_funds", "Owner's money at the start", NOMINAL).from(0, 1e9));
        grants = entries.add(e.entry("grant_funds", "Grants", NOMINAL).from(0, 1e9));
        Line insurance = single.line(
                "building_insurance",
                "Insurance while building",
                NOMINAL,
                start.rates()
                        .insuranceOf(start.startUp().cash)
                        .times(months.counting(ONE).over(number(TWO * Months.IN_A_YEAR, ONE)))
                        .times(number(1, Unit.parse("a")))
                        .counting(NOMINAL),
                "of half of what is built, on average while building: common practice, no source");
        workingCapital = start(single, "funds_working_capital", "Cash kept for the first months", working);
        plants = start(single, "funds_plants", "Plants", start.startUp().plants);
        land = single.line(
                "funds_land",
                "Land and site",
                NOMINAL,
                start.uses().ofKind(FundKind.LAND).counting(NOMINAL));
        Formula before = start.startUp()
                .cash
                .plus(sum(start.uses().amount, start.uses().axis))
                .plus(working)
                .counting(NOMINAL)
                .plus(insurance);
        Balancing balance = new Balancing(b, loans, months, before, grants.plus(ownerEntered));
        loanAmount = balance.amount;
        isBalancing = balance.isBalancing;
        balancing = balance.count;
        List<Use> rows = rows(start, balance, insurance);
        axis = Axis.rows(
                "start_use", "Use of funds", rows.stream().map(Use::key).toList(), 0);
        ScheduleBuilder table = b.shared(Sheets.LENDING, Tables.USES);
        label = table.textLine(
                "start_use_label",
                "Use",
                new Rows(axis, rows.stream().map(Use::label).toList()));
        b.nameRows(axis, label);
        amount = table.line(
                "start_use_amount",
                "Amount",
                NOMINAL,
                new Rows(axis, rows.stream().map(Use::amount).toList()),
                AT_START);
        total = single.line("uses_total", "Uses of funds", NOMINAL, sum(amount, axis));
        loansTotal = single.line("loans_total", "Loans", NOMINAL, sum(loanAmount, loans.axis));
        owner = single.line(
                "owner_total",
                "Owner's money",
                NOMINAL,
                total.minus(loansTotal).minus(grants),
                "as entered where a loan balances; what is missing where none does: plain arithmetic");
        single.line(
                "sources_total",
                "Sources of funds",
                NOMINAL,
                loansTotal.plus(grants).plus(owner));
    }

    private static Line start(ScheduleBuilder s, String id, String label, Formula money) {
        return s.line(id, label, NOMINAL, money.counting(NOMINAL), AT_START);
    }

    private List<Use> rows(Start start, Balancing balance, Line insurance) {
        StartUp up = start.startUp();
        PartsByKind parts = start.parts();
        List<Use> rows = new ArrayList<>();
        Uses own = start.uses();
        for (int i = 0; i < own.axis.size(); i++) {
            rows.add(new Use(
                    "own_" + (i + 1),
                    joined(new Element(own.label, own.axis, i)),
                    new Element(own.amount, own.axis, i).counting(NOMINAL)));
        }
        rows.add(new Use(
                "house", "House", parts.of(FundKind.HOUSE).plus(start.house()).counting(NOMINAL)));
        rows.add(new Use("equipment", "Equipment", parts.of(FundKind.EQUIPMENT).counting(NOMINAL)));
        rows.add(new Use(
                "growing",
                "Benches, trough, substrate, irrigation",
                parts.of(FundKind.GROWING).counting(NOMINAL)));
        rows.add(new Use(
                "delivery", "Freight and sales tax of parts", parts.delivery().counting(NOMINAL)));
        rows.add(new Use("labour", "Installation labour", up.labour.counting(NOMINAL)));
        rows.add(new Use(
                "contingency", "Contingency", up.lumps.minus(start.house()).counting(NOMINAL)));
        rows.add(new Use("plants", "Plants", plants));
        rows.add(new Use("fees", "Fees of loans", balance.fees));
        rows.add(new Use("interest", "Interest while building", balance.building));
        rows.add(new Use("insurance", "Insurance while building", insurance));
        rows.add(new Use("working_capital", "Cash kept for the first months", workingCapital));
        return rows;
    }
}
