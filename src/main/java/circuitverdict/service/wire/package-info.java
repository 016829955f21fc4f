/** Between the contract's JSON and the engine: one mapping in, one writer out, both by hand. */
package circuitverdict.service.wire;
