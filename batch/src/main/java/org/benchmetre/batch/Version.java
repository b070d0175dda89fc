package org.benchmetre.batch;

import java.util.Optional;
import picocli.CommandLine.IVersionProvider;

/** The version the jar was built as. */
final class Version implements IVersionProvider {

    @Override
    public String[] getVersion() {
        String built = Version.class.getPackage().getImplementationVersion();
        return new String[] {"benchmetre " + Optional.ofNullable(built).orElse("(not run from its jar)")};
    }
}
