package circuitverdict.service.edge;

import io.quarkus.runtime.Startup;
import jakarta.enterprise.context.Dependent;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;

/** What resources inject: one contract, compiled once, and its readers. */
@Dependent
public class EdgeBeans {

  /** At start: a contract that does not load stops the service, and no caller waits for it. */
  @Startup
  @Produces
  @Singleton
  Contract contract() {
    return Contract.fromClassPath();
  }

  @Produces
  @Singleton
  ContractReader contractReader(Contract contract) {
    return new ContractReader(contract);
  }

  @Produces
  @Singleton
  QueryReader queryReader(Contract contract) {
    return new QueryReader(contract);
  }
}
