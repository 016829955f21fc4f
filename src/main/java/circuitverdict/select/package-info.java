/**
 * What follows from checks when something is varied: limits solved backwards, remedies, and the
 * choice of a device. Everything is found by running the checks themselves, so that what is offered
 * has been tried.
 */
package circuitverdict.select;
