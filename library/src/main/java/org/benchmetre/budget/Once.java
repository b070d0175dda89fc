package org.benchmetre.budget;

import java.io.Serializable;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Supplier;

/** Keeps what is worked out once, one object of a kind. Empty again when it is read back from serialised form. For several threads. */
final class Once implements Serializable {

    private static final long serialVersionUID = 1L;

    private transient Map<Class<?>, Object> kept;

    synchronized <T> T get(Class<T> kind, Supplier<T> work) {
        if (kept == null) {
            kept = new HashMap<>();
        }
        Object known = kept.get(kind);
        if (known == null) {
            known = work.get();
            kept.put(kind, known);
        }
        return kind.cast(known);
    }
}
