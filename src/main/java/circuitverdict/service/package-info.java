/**
 * The HTTP operations. Resources are thin: they read a body against the contract, ask the engine
 * and write its answer. {@code edge} is the strict HTTP around them, {@code wire} the mapping in
 * and out.
 */
package circuitverdict.service;
