package org.benchmetre.budget.entry;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Codes as ISO 4217 lists them: list one, currencies in use; list three, withdrawn ones. */
class TenderTest {

    @ParameterizedTest
    @ValueSource(strings = {"USD", "EUR", "JPY", "KWD", "TND", "CHF", "INR", "XOF", "XPF"})
    void money_of_some_country_is_tender(String code) {
        assertThat(Tender.isTender(code)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"XXX", "XTS", "XAU", "XDR", "DEM", "FRF", "ITL", "CHE", "usd", "EURO", ""})
    void codes_for_tests_metals_and_accounts_and_withdrawn_money_are_not(String code) {
        assertThat(Tender.isTender(code)).isFalse();
    }

    @ParameterizedTest
    @ValueSource(strings = {"USD", "DEM", "XAU", "XXX"})
    void a_code_may_stand_for_money_that_nobody_pays_with(String code) {
        assertThat(Tender.isCode(code)).isTrue();
        assertThat(Tender.isCode(code + "S")).isFalse();
    }
}
