package org.benchmetre.farm.feed;

import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.benchmetre.farm.profile.CropProfile;
import org.benchmetre.farm.profile.ProfileRow;

/**
 * Ions, salts and acids of a profile, each in its order. Salts of one ion stand together; the ions are set in the order of the salts.
 *
 * @param ions every ion, with its numbers
 * @param salts in the order in which they are set
 * @param acids one is chosen
 */
record FeedTables(Map<Ion, IonFacts> ions, List<Salt> salts, List<AcidKind> acids) {

    private static final Set<Ion> SET = EnumSet.range(Ion.NITRATE, Ion.MAGNESIUM);

    /** Keeps its own copies. */
    FeedTables {
        ions = Collections.unmodifiableMap(new EnumMap<>(ions));
        salts = List.copyOf(salts);
        acids = List.copyOf(acids);
    }

    /** Reads the tables; throws {@link IllegalStateException} when an ion is missing or none of the salts is set by it. */
    static FeedTables of(CropProfile profile) {
        Map<Ion, IonFacts> ions = new EnumMap<>(Ion.class);
        for (ProfileRow row : profile.rows("ions")) {
            IonFacts facts = IonFacts.of(row);
            ions.put(facts.ion(), facts);
        }
        List<Salt> salts = profile.rows("salts").stream().map(Salt::of).toList();
        List<AcidKind> acids = profile.rows("acids").stream().map(AcidKind::of).toList();
        for (Ion ion : Ion.values()) {
            boolean isSet = salts.stream().anyMatch(salt -> salt.setBy() == ion);
            if (!ions.containsKey(ion) || isSet != SET.contains(ion)) {
                throw new IllegalStateException("The profile of " + profile.name() + " lacks the ion " + ion.key()
                        + ", or a salt for it, or has a salt set by an ion that follows from others.");
            }
        }
        return new FeedTables(ions, salts, acids);
    }

    /** What is documented of an ion. */
    IonFacts of(Ion ion) {
        return ions.get(ion);
    }

    /** Keys of the ions, in their order. */
    List<String> ionKeys() {
        return ions.keySet().stream().map(Ion::key).toList();
    }

    /** Keys of the salts, in their order. */
    List<String> saltKeys() {
        return salts.stream().map(Salt::key).toList();
    }

    /** Keys of the acids, in their order. */
    List<String> acidKeys() {
        return acids.stream().map(AcidKind::key).toList();
    }
}
