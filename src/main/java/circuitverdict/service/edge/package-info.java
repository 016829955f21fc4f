/**
 * The strict edge of the service: what comes in is checked here, and what goes out gets its headers
 * here, so that resources hold nothing but their own subject.
 *
 * <p>A request passes {@link circuitverdict.service.edge.EdgeRoutes} (correlation id), finds its
 * resource, passes {@link circuitverdict.service.edge.BodyFilter} (media type, compression, size)
 * and is read by {@link circuitverdict.service.edge.ContractReader} or {@link
 * circuitverdict.service.edge.QueryReader} against the contract itself: there is no second,
 * annotated statement of what is valid. Everything wrong is one {@link
 * circuitverdict.service.edge.InvalidRequest} with all faults, and every failure leaves as a {@link
 * circuitverdict.service.edge.Problem}. Answers leave through {@link
 * circuitverdict.service.edge.Representation}.
 *
 * <p>Nulls: none is taken or given, but for the members of {@link
 * circuitverdict.service.edge.Fault} that do not apply.
 */
package circuitverdict.service.edge;
