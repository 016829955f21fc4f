package circuitverdict.published;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.Test;

/** A published worked example that the engine is held to; what it says stands in the case file. */
@Test
@Target(ElementType.METHOD)
@Retention(RetentionPolicy.RUNTIME)
public @interface WorkedExample {
  /** Id of the case. */
  String id();

  /** What it is about. */
  String title();

  /** Title of the source. */
  String source();

  /** The standard it follows. */
  String standard();
}
