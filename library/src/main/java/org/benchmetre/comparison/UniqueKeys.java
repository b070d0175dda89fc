package org.benchmetre.comparison;

import java.util.HashSet;
import java.util.Locale;
import java.util.Set;

/** Gives out keys, none of them twice. */
final class UniqueKeys {

    private final Set<String> taken = new HashSet<>();

    /** The key itself, or with the first number behind it that makes it another. */
    String unused(String key) {
        String unused = key;
        for (int i = 2; !taken.add(unused); i++) {
            unused = key + "_" + i;
        }
        return unused;
    }

    /** A key made of a name: letters and digits in lower case, all else a line between them. */
    String ofName(String name) {
        StringBuilder key = new StringBuilder();
        name.toLowerCase(Locale.ROOT)
                .codePoints()
                .map(sign -> Character.isLetterOrDigit(sign) ? sign : ' ')
                .forEach(key::appendCodePoint);
        String words = key.toString().strip().replaceAll(" +", "_");
        return unused(words.isEmpty() ? "scenario" : words);
    }
}
