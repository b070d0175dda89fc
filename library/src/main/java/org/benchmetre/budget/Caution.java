package org.benchmetre.budget;

import java.io.Serializable;

/**
 * A sentence that stands beside the figures where the work can hurt someone or the figures can mislead.
 *
 * @param topic a word or two
 * @param text the caution, which defers to local codes and licensed practice
 */
public record Caution(String topic, String text) implements Serializable {}
