package org.benchmetre.farm.feed;

import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;

/**
 * What a salt as sold brings of each of its ions: what its bag declares, where that is entered, else what its formula or its row of the
 * profile says, times its purity.
 *
 * <pre>
 * n = d e M / F          where a content is declared, else   n = p f
 * n  ions that a mole of the salt as sold brings     d  declared content, a share by mass     e  share of its element in it, by mass
 * M  molar mass of the salt, g/mol                   F  molar mass of the element, g/mol      p  purity     f  ions by formula
 * </pre>
 *
 * A mole of the salt as sold is as many grams as its formula weighs. Plain stoichiometry.
 */
final class SaltContent {

    private static final Unit PERCENT = Unit.parse("%");

    private final Map<Salt, Map<Ion, Line>> content = new HashMap<>();
    private final Map<Ion, Formula> shareOfElement = new EnumMap<>(Ion.class);
    private final FeedTables tables;
    private final FarmEntries entries;
    private final ScheduleBuilder bag;

    SaltContent(BudgetBuilder b, FarmEntries entries, FeedTables tables) {
        this.tables = tables;
        this.entries = entries;
        bag = b.schedule(Sheets.OPERATIONS, "Salts as sold: purity, and what bags declare");
        bag.note(
                "0 stands for not declared: then the formula counts, times the purity. Where a content is declared it goes before both. "
                        + "Nitrogen in total splits as in the formula.");
        List.of(Ion.PHOSPHORUS, Ion.POTASSIUM, Ion.CALCIUM, Ion.MAGNESIUM, Ion.SULPHUR)
                .forEach(this::askForm);
        ScheduleBuilder s = b.schedule(Sheets.OPERATIONS, "Ions that a salt as sold brings");
        s.note("For each mole, which is as many grams of the salt as sold as its formula weighs.");
        tables.salts().forEach(salt -> content.put(salt, ask(s, salt)));
    }

    /** What a mole of a salt as sold brings of an ion, a plain number; null where it brings none. */
    Line of(Salt salt, Ion ion) {
        return content.get(salt).get(ion);
    }

    private void askForm(Ion ion) {
        List<String> forms = DeclaredContent.forms(ion);
        Line form = entries.add(bag.textEntry(ion.key() + "_declared_as", words(ion) + " is declared as")
                .oneOf(forms));
        double oxide = DeclaredContent.elementShare(forms.get(0), tables.of(ion).molarMass());
        Line share = bag.line(
                ion.key() + "_declared_share",
                words(ion) + " in what is declared, by mass",
                ONE,
                when(form.is(forms.get(0)), number(oxide, ONE), one()),
                ChemicalElement.SOURCE);
        shareOfElement.put(ion, share);
    }

    private Map<Ion, Line> ask(ScheduleBuilder s, Salt salt) {
        Line purity = entries.add(bag.entry(salt.key() + "_purity", salt.label() + ", purity", ONE)
                .above(0, 1));
        Map<Ion, Double> byFormula = salt.substance().ions();
        boolean isMixed = byFormula.containsKey(Ion.NITRATE) && byFormula.containsKey(Ion.AMMONIUM);
        Line nitrogen = isMixed ? declared(salt, "nitrogen", "N") : null;
        Map<Ion, Line> lines = new EnumMap<>(Ion.class);
        byFormula.forEach((ion, count) -> {
            Line declared = declared(salt, ion.key(), told(ion));
            Formula otherwise = number(count, ONE).times(purity);
            if (nitrogen != null && (ion == Ion.NITRATE || ion == Ion.AMMONIUM)) {
                double share = count / (byFormula.get(Ion.NITRATE) + byFormula.get(Ion.AMMONIUM));
                Formula split = nitrogen.in(ONE).times(number(share * perMass(salt, ion), ONE));
                otherwise = when(nitrogen.isPositive(), split, otherwise);
            }
            Formula asDeclared = declared.in(ONE)
                    .times(shareOfElement.getOrDefault(ion, one()))
                    .times(number(perMass(salt, ion), ONE));
            lines.put(
                    ion,
                    s.line(
                            salt.key() + "_" + ion.key() + "_content",
                            salt.label() + ": " + ion.key(),
                            ONE,
                            when(declared.isPositive(), asDeclared, otherwise),
                            "what is declared, else the chemical formula times purity; " + ChemicalElement.SOURCE));
        });
        return lines;
    }

    /** Moles of an ion in a mole of the salt, were all of its mass the element. */
    private double perMass(Salt salt, Ion ion) {
        return salt.substance().molarMass() / tables.of(ion).molarMass();
    }

    private Line declared(Salt salt, String of, String words) {
        return entries.add(bag.entry(salt.key() + "_declared_" + of, salt.label() + ", " + words + " declared", PERCENT)
                .from(0, 100));
    }

    /** As bags tell it. */
    private static String told(Ion ion) {
        return switch (ion) {
            case NITRATE -> "NO3-N";
            case AMMONIUM -> "NH4-N";
            case PHOSPHORUS -> "P";
            case POTASSIUM -> "K";
            case CALCIUM -> "Ca";
            case MAGNESIUM -> "Mg";
            case SULPHUR -> "S";
            default -> words(ion);
        };
    }

    private static String words(Ion ion) {
        return ion.key().substring(0, 1).toUpperCase(Locale.ROOT) + ion.key().substring(1);
    }
}
