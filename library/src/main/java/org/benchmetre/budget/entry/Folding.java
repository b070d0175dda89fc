package org.benchmetre.budget.entry;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;

/**
 * Compares names as readers do: without regard to case, to spaces at the ends, and to letters that only look different in code, such
 * as a ligature and its letters (compatibility decomposition, then upper and lower case of the root locale).
 */
public final class Folding {

    private Folding() {}

    /**
     * A name as it is compared.
     *
     * @param name any text
     * @return the same for names that readers take for one
     */
    public static String folded(String name) {
        String plain = Normalizer.normalize(name.strip(), Normalizer.Form.NFKC);
        String cased = plain.toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT);
        return Normalizer.normalize(cased, Normalizer.Form.NFKC);
    }

    static int indexOf(List<String> names, String name) {
        String wanted = folded(name);
        for (int i = 0; i < names.size(); i++) {
            if (folded(names.get(i)).equals(wanted)) {
                return i;
            }
        }
        return -1;
    }
}
