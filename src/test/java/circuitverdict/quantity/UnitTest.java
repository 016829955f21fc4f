package circuitverdict.quantity;

import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Units are found by their printed symbol and by nothing else. */
class UnitTest {

  @ParameterizedTest
  @EnumSource(Unit.class)
  void everyUnitIsFoundByItsSymbol(Unit unit) {
    assertSame(unit, Unit.ofSymbol(unit.symbol()));
  }

  @Test
  void anUnknownSymbolIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> Unit.ofSymbol("Ohm"));
    assertThrows(IllegalArgumentException.class, () -> Unit.ofSymbol(""));
  }
}
