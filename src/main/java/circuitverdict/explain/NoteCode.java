package circuitverdict.explain;

import java.util.Locale;

/** Every note the service can give, with what it means. The catalogue is served at /v1/codes. */
public enum NoteCode {
  // missing
  MISSING_INPUT("This input is needed and was not stated."),
  NOT_IN_TABLES(
      "The edition's tables hold no value for this, and nothing is extrapolated: state the value, or"
          + " choose one that is tabulated."),
  OUT_OF_RANGE(
      "This figure lies outside what a supply can state, and is left out: read what was stated again."),
  READING_NOT_JUDGED(
      "No rule of this version judges a reading between these conductors, or there: it is left open."),
  READING_ABOVE_DESIGN(
      "More than the design rests on: the design with what was read would settle the question."),
  GENERATION_NOT_COUNTED(
      "What a generator, storage or photovoltaic system adds to a fault is not computed: greatest currents"
          + " are higher by it."),
  READING_OF_ORIGIN(
      "How much of it lies beyond the origin is not known: a reading of Ze there, or of R1 + R2, would"
          + " settle the question."),
  READING_IMPLAUSIBLE(
      "No such conductors give this reading beside what else was stated: read it again, and look for the"
          + " cause before relying on it."),
  DEVICE_NOT_JUDGED("Devices of this standard or category are not judged by this check."),
  MAKER_DATA_NEEDED(
      "The maker's let-through data over this range of current would settle the question."),
  ENERGY_CLASS_NEEDED(
      "The energy limiting class marked on the device would limit the energy of faults that trip it"
          + " at once, and may settle the question."),
  MAKER_TIME_NEEDED("The maker's greatest operating time would settle the question."),
  MAKER_CURVE_NEEDED(
      "The maker's time–current curve of the device would settle the question: the standard promises"
          + " neither that it trips nor that it does not."),
  MAKER_COUNT_NEEDED(
      "The maker's greatest number of these items on one device would settle the question."),
  BACK_UP_EVIDENCE_NEEDED(
      "Above its own rating a device promises nothing: the declared rating of the combination with"
          + " the device upstream would settle the question."),
  PROOF_WANTED("Only published guidance supports this, and proof was asked for."),
  HIGH_INTEGRITY_NEEDED(
      "A standing current of this size needs a protective conductor of high integrity (543.7):"
          + " state one of at least the size shown, or show how else the clause is met."),
  STAND_IN_FAILS(
      "With the value that stands in for it the check fails; the real value may be better, so it"
          + " decides: state it."),
  BELOW_PHYSICS(
      "No conductor of its metal and size has less than the value shown: what is stated, its unit or"
          + " the size is wrong."),
  VOLTAGE_BEYOND_CIRCUIT(
      "The load is rated for another voltage than the circuit has: what it draws here does not"
          + " follow from its power."),
  SHARE_OF_LINES(
      "How the parts share the lines is not stated: taken as all on one line the drop exceeds its"
          + " limit."),
  CHARGING_OUTDOORS_TOO(
      "A charging point that may be used for a vehicle outdoors counts as one outdoors: a permitted"
          + " measure against a broken PEN conductor settles it."),
  CONSTRUCTION_EARTHING(
      "Protective multiple earthing serves a construction site only where all extraneous-conductive"
          + "-parts are reliably bonded, which no request states: another earthing settles it."),
  REDUCED_NEUTRAL(
      "A neutral smaller than the line conductors is not judged in a circuit of several lines: its"
          + " own protection decides (431.2)."),
  RISK_ASSESSMENT(
      "Only a documented risk assessment excuses these socket-outlets from additional protection,"
          + " and no request states one: fit a residual current device of 30 mA, or show it."),
  OTHER_MEASURE(
      "Another measure of the section for this location may serve instead, which no request states:"
          + " a residual current device of 30 mA settles it."),
  EACH_ITS_OWN(
      "Each charging point owes a residual current device of its own (722.531.3): describe each as a"
          + " circuit, or say how each is protected."),
  DIRECT_CURRENT_DETECTION(
      "A charging point asks for type B, or for detection of 6 mA of direct current beside type A or"
          + " F."),
  SELECTIVITY_DATA_NEEDED(
      "What the maker declares of the selectivity of the two devices, up to which current, would"
          + " settle the question."),
  ISOLATION_NEEDED(
      "A circuit must be one that can be isolated from its live conductors, in TT from the neutral too"
          + " (462.2): state a device of so many poles that isolates, its own or a main switch before"
          + " it."),
  DERATING_NEEDED(
      "Above its reference temperature a device carries less than its rated current: the maker's"
          + " derating up to this temperature would settle how much."),
  CARAVAN_EARTHING(
      "Protective multiple earthing does not serve caravans or boats: another earthing settles it, or"
          + " that the circuit serves none."),
  // assumptions
  ASSUMED_NOMINAL_VOLTAGE("Nominal voltage taken as that of public supplies."),
  ASSUMED_AMBIENT("Ambient temperature taken as the reference temperature of the rating tables."),
  ASSUMED_SINGLE_CIRCUIT("Taken as run alone, not grouped with other circuits."),
  ASSUMED_BUNCHED("Grouped circuits taken as bunched, the least favourable arrangement."),
  ASSUMED_SOIL("Soil taken with the reference thermal resistivity of the rating tables."),
  ASSUMED_DEPTH("Depth of laying taken as the reference depth of the rating tables."),
  ASSUMED_ORIGIN("The circuit taken as fed from the origin."),
  ASSUMED_BOARD("The supply point taken as a board beyond the origin, the less favourable case."),
  ASSUMED_MEASURED_COLD(
      "The supply's figures taken as readings, the loop impedance as measured cold: the least"
          + " favourable basis."),
  ASSUMED_PHASES("Live conductors taken as line and neutral of the single-phase supply."),
  ASSUMED_NEUTRAL_SIZE("Neutral taken as large as the line conductor."),
  ASSUMED_PROTECTIVE_SIZE("Protective core taken as the usual one beside this line conductor."),
  ASSUMED_GENERAL_PURPOSE("The fuse taken as one of general purpose (gG)."),
  ASSUMED_SETTING("The setting Ir taken as the rated current In."),
  ASSUMED_EFFICIENCY("The rated power taken as power drawn."),
  ASSUMED_REACTANCE("Reactance taken by common practice where no table gives it."),
  ASSUMED_INFINITE_NETWORK(
      "The network before the transformer taken as without impedance for greatest currents, which none"
          + " exceeds."),
  ASSUMED_GRID_RATIO("R/X of the network before the transformer taken by IEC 60909-0."),
  ASSUMED_ZERO_SEQUENCE(
      "Zero-sequence impedance of the transformer taken as its short-circuit impedance, as of windings"
          + " in delta and star with the neutral brought out."),
  ASSUMED_VOLTAGE_TOLERANCE(
      "The wider tolerance of the voltage taken: the greatest of greatest currents, the least of least"
          + " ones."),
  ASSUMED_LIVE_AS_FED("Live conductors taken as those of the circuit that feeds it."),
  ASSUMED_CORE_ALONE("The protective core taken as carrying the whole fault, without the armour."),
  ASSUMED_RESIDUAL_CAPACITY(
      "Residual making and breaking capacity taken as the least of the standard."),
  ASSUMED_EXACT_READING("Readings taken as exact: no uncertainty is stated."),
  ASSUMED_COPPER("Conductors taken as copper."),
  ASSUMED_GUIDE_DEMAND(
      "Demand by the On-Site Guide, Appendix A: a part of the rated current of loads of this kind."),
  ASSUMED_LAMP_INPUT(
      "Power factor and losses of discharge lamps not stated: the usual factor over their watts was"
          + " taken."),
  ASSUMED_UNITY_POWER_FACTOR("Power factor taken as 1, by the kind of load."),
  ASSUMED_THIRD_HARMONIC("Third harmonic taken as the most for which no factor is needed."),
  ASSUMED_RATED_VOLTAGE("Rated voltage taken as the least of the standard for such a device."),
  ASSUMED_BREAKING_CAPACITY("Breaking capacity taken as the standard's own for this fuse."),
  ASSUMED_THREE_PHASE_CURRENT(
      "Greatest three-phase current taken as twice the line–neutral one, its most where the neutral"
          + " of the supply is no smaller than the line."),
  ASSUMED_TT_FAULT_CURRENT(
      "Greatest earth fault current taken from half the electrode's resistance; holds only without a"
          + " metallic path to a TN earth."),
  DESIGN_CURRENT_IS_RATING(
      "Design current taken as the device's rated current, as for ring and socket circuits without"
          + " a stated load."),
  ASSUMED_NO_INRUSH(
      "Taken as drawing no more when it is switched on than when it runs, by the kind of load."),
  ASSUMED_DIRECT_ON_LINE("The motor taken as started direct on line, the hardest start."),
  ASSUMED_SYMMETRIC_START(
      "The first peak of the start taken as that of a symmetrical current; of a star–delta start"
          + " three times the current in star, as at the changeover. An offset peak may be up to"
          + " twice as great."),
  TYPICAL_INRUSH("The worst of the typical values for a start of this kind."),
  EARTH_LOOP_STANDS_IN(
      "The earth fault loop impedance stands for the line–neutral loop: armour, large protective"
          + " conductors and bonded steel can make the earth path the better one."),
  TYPICAL_LOOP_IMPEDANCE("Loop impedance taken as the typical greatest value declared."),
  ESTIMATED_SUPPLY(
      "The supply follows from figures that stand in for ones not stated: it carries no failure."),
  TYPICAL_ELECTRODE("Resistance of the earth electrode taken as a typical value."),
  TYPICAL_FAULT_CURRENT("Greatest fault current taken as the typical value declared."),
  ASSUMED_NOT_HIGHER_RISK(
      "Premises taken as none of those in which arc fault detection is owed (421.1.7)."),
  // remarks
  ADDITIONAL_PROTECTION_OWED(
      "A residual current device of 30 mA is owed by the clauses named, and none is described."),
  ARC_FAULT_OWED(
      "Arc fault detection is owed in these premises, and the device is said to have none."),
  STANDING_NOT_STATED(
      "The standing protective-conductor current is not stated: no more than 30 % of the rated"
          + " residual operating current, lest the device trips without a fault (531.3.2)."),
  STANDING_OF_OTHERS(
      "The residual current device serves other circuits too: their standing currents come on top."),
  STANDING_OF_LINES(
      "Standing currents of different lines add to less than the sum of their figures: a measurement"
          + " would settle the question."),
  RESIDUAL_TYPE_OF_OTHERS(
      "A load behind the shared residual current device may cause a residual current that its type does"
          + " not detect, which may blind it for all."),
  LIGHTLY_LOADED(
      "Circuits of the group that carry no more than the share shown of what they may in it are not"
          + " counted: as stated."),
  GROUP_NOT_OVERLOADED_TOGETHER(
      "The circuits of the group are stated never all to be overloaded at once (Appendix 4, 5.1.2)."),
  ASSEMBLY_SMALL_CURRENT(
      "The assembly is behind no fuse that its maker names: at a current of this size none is asked"
          + " for (IEC 61439-1, 10.11.2)."),
  MEMBER_NOT_USED("This member is not used by this operation."),
  NO_REMEDY("No single change of those tried mends this check without breaking another."),
  PRINTED_VALUE_ADMITS(
      "The printed value, being rounded, would admit this; the exact expression decides."),
  ABOVE_SERVICE_CAPACITY(
      "Above the service capacity Ics: after a fault of this size the device may have to be"
          + " replaced."),
  STANDARD_CAPACITY_COUNTS(
      "The standard of this device knows no greater breaking capacity: what is stated above it is"
          + " not counted."),
  CONDITIONAL_RATING(
      "Held by the conditional rating of the assembly behind its fuse, with the assembly maker's own"
          + " devices."),
  BACKED_UP("Held by the declared combination with the device upstream."),
  RESIDUAL_GOVERNS(
      "The overcurrent device alone does not disconnect in time; the residual function does."),
  OVERCURRENT_GOVERNS("The overcurrent device disconnects in time."),
  DEEMED("Deemed to comply by the clause named; not computed."),
  BY_GUIDANCE("Rests on published guidance, not on the standard's own promise."),
  MEASURED_RAISED("Brought from cold to operating temperature, and widened by the uncertainty."),
  TERMINALS_LIMIT(
      "Rated by the 70 °C table of the same cable: the terminals are not declared for more."),
  OVERLOAD_OMITTED("The load cannot overload the conductor: overload protection may be omitted."),
  DESIGN_CURRENT_BELOW_LOAD(
      "The stated design current decides, though the load's ratings give more: state the diversity"
          + " that justifies it, or correct one of the two."),
  CHARGING_DIVERSITY(
      "Diversity of charging points on a final circuit counts only where a load control keeps to it"
          + " (722.311.201)."),
  RING_RULE("Ring final circuit: each leg must carry the rating this clause states."),
  RING_ACCESSORIES(
      "The rule for rings is for accessories to BS 1363: state as socket-outlets what is connected"
          + " by them, fused connection units too."),
  SPUR_GUIDANCE("A spur is taken by the rule for its ring: guidance, not a clause."),
  TEMPERATURE_CORRECTED(
      "Within the limit with the conductors at their real operating temperature (Ct)."),
  BEYOND_FIVE_SECONDS(
      "Longer than 5 s: the adiabatic form errs on the safe side, so failure is not stated by it."),
  CURRENTS_CONTRADICT(
      "The least fault current exceeds the greatest stated: one of the two inputs is wrong."),
  ENERGY_EXCEEDS(
      "The energy let through exceeds what the conductor stands by calculation; its size alone"
          + " meets the table, which the rules allow instead."),
  TABLE_54_7("Held by Table 54.7: no smaller than the line conductor demands."),
  STANDING_CURRENT(
      "Standing current above this: permanent connection or an industrial connector is needed"
          + " (543.7)."),
  LENGTH_ALLOWANCE("The limit includes the allowance for length beyond 100 m."),
  STRICTEST_LIMIT("Held against the strictest limit that the missing input could set."),
  BONDING_NOT_COVERED("Protective bonding conductors are not judged."),
  LOAD_STARTS(
      "What the load draws when it starts, with all of it starting at once: the type of the device"
          + " follows from this, never from the kind of premises."),
  TYPICAL_START(
      "Typical worst values for a start of this kind, for orientation only: state the maker's."),
  DRAWN_CURVE_HOLDS(
      "Between the earliest and the latest time of the standard the drawn curve was asked, the slow"
          + " edge of what devices do: one at the fast edge may trip."),
  TYPE_B_RIDES_START("Of this rating type B, the least, rides the start."),
  TYPE_C_RIDES_START(
      "Of this rating type C is the least that rides the start: that of B may trip at once at the"
          + " current shown."),
  TYPE_D_RIDES_START(
      "Of this rating type D is the least that rides the start: that of C may trip at once at the"
          + " current shown."),
  NO_TYPE_RIDES_START(
      "Of this rating no type is known to ride the start: a greater rated current, or a milder"
          + " start, is wanted."),
  RESTS_ON_MEMORY("A value here was recalled, not read: check it against the printed standard."),
  SELECTIVE_ON_OVERLOAD(
      "On overload only this device opens: what opens it, the device upstream carries."),
  NOT_SELECTIVE_ON_OVERLOAD("On overload nothing shows that the device upstream does not open."),
  FULL_SELECTIVITY(
      "On short circuit only this device opens, at every current that can flow here: full"
          + " selectivity."),
  PARTIAL_SELECTIVITY(
      "On short circuit it is shown that only this device opens up to the current named, and not"
          + " above it: partial selectivity."),
  NO_SELECTIVITY("On short circuit nothing shows, at any current, that only this device opens."),
  DECLARED_SELECTIVITY(
      "The limit of selectivity is that declared by the maker for this device upstream."),
  UPSTREAM_OPENS(
      "At the current shown the device upstream opens for certain, while this one still holds."),
  UPSTREAM_WITHOUT_RELEASE(
      "The device upstream has no overcurrent release: overload and short circuit do not open it."),
  RESIDUAL_SELECTIVE(
      "On a residual current only the downstream function opens: the one upstream is less sensitive"
          + " and delayed."),
  RESIDUAL_NOT_SELECTIVE(
      "On a residual current nothing shows that the function upstream does not open."),
  RESIDUAL_ZONE_DOES_NOT_APPLY(
      "The device upstream has no residual function: residual currents do not open it."),
  CIRCUIT_ALONE(
      "Judged for the current of this circuit alone: what else the device upstream carries brings it"
          + " nearer to opening."),
  NOT_FOR_ORDINARY_PERSONS(
      "Ordinary persons operate it, and its standard is for instructed or skilled persons."),
  ONE_DIRECTION("It may be supplied from one side only, and power may flow both ways here."),
  NOT_DECLARED_FOR_ASSEMBLY("The assembly's maker does not declare the device for it."),
  CARAVAN_OR_BOAT(
      "It supplies caravans or boats, which protective multiple earthing must not serve."),
  DECLARATION_NOT_STATED(
      "Whether the assembly's maker declares the device for it was not stated, and is not judged."),
  RESIDUAL_DEVICE_FEEDS_OTHERS(
      "The residual current device is judged for this circuit: the currents of others that it feeds add"
          + " up in it."),
  RESIDUAL_DEVICE_OVERLOAD(
      "No device before or behind the residual current device is rated to protect it from overload: its"
          + " maker's instructions for a load that cannot overload would settle the question."),
  HUMIDITY_BEYOND_STANDARD(
      "Moister than the standard of the device is made for at this temperature: its maker's word would"
          + " settle the question."),
  CONDITIONAL_WITH_NAMED_DEVICE(
      "The conditional short-circuit current holds with the protective device that the maker of the"
          + " residual current device names for it."),
  ASSEMBLY_AMBIENT_NOT_STATED(
      "The temperature in the assembly was not stated: above its reference temperature a device"
          + " carries less than its rated current, which is then not judged."),
  READING_NOT_FAILURE(
      "A reading above 0.8 of the limit is not a failure: then Ze + 1.20·(R1 + R2) decides."),
  READ_FROM_MARKING("Not stated: read from the marks on the face of the device."),
  MARK_AGAINST_MEMBER(
      "The marks say otherwise than this member: the one of the two that promises less counts, and"
          + " neither where that depends on the check."),
  MARK_WITHDRAWN(
      "A mark of a withdrawn standard: the device is old, and what it says is judged by no standard in"
          + " force."),
  CONFORMITY_CLAIMED("Conformity is claimed by the mark; it is not verified."),
  CLASS_WITHOUT_FIGURE(
      "The class is claimed without a figure: the annex covers no such type, rating or capacity. The"
          + " maker's let-through data tell what the device lets through."),
  DUAL_STANDARD(
      "Marked to two standards: taken by that for ordinary persons, with its capacity and its limits."),
  FREQUENCY_MARKED("Marked for another frequency than that for which circuits are judged."),
  MARK_AMBIGUOUS("This mark can mean more than one thing here: nothing is taken from it."),
  MARK_NOT_READ("This text is no mark that the service knows: nothing is taken from it."),
  READ_FROM_FEATURE("Not stated: read from the classified features of the product."),
  FEATURE_AGAINST_MEMBER(
      "The classified features say otherwise than this member: the one of the two that promises less"
          + " counts, and neither where that depends on the check."),
  FEATURE_NOT_READ(
      "This feature, its value or its unit is none that the service knows: nothing is taken from it."),
  FEATURES_NOT_READ("None of the features is read: the service does not know their class."),
  GTIN_CHECK_DIGIT("The check digit of this trade item number is wrong: read it again."),
  READING_NOT_MENDED(
      "No change of the request mends a reading: look for the cause in the circuit, and read again."),
  READING_BETTER(
      "Better than the circuit's own conductors allow: parallel earth paths are the usual cause, and may not"
          + " stay."),
  TT_PATH(
      "In a TT system an earth fault closes through the electrodes: read or state its loop at each point."),
  // contradictions of marks
  MARKS_DISAGREE("Two marks say different things of the same property: neither is taken."),
  MARK_NOT_OF_STANDARD(
      "This mark cannot be on a device to the standard that is marked: one of the two is wrong, and the"
          + " mark is not taken."),
  LETTER_WITHOUT_RATING(
      "A type letter stands with its rated current: no rated current is marked with it."),
  RATING_NOT_PREFERRED(
      "The rated current is none that the standard prefers or that is usually sold: read it again. It"
          + " is taken as marked."),
  CLASS_NOT_KNOWN("There are the energy limiting classes 1 to 3: this one is not taken."),
  VOLTAGE_NOT_OF_POLES(
      "A device with so many poles does not have this rated voltage: neither of the two is taken."),
  RESIDUAL_NOT_PREFERRED(
      "The rated residual operating current is none of the standard's values: it is not taken."),
  SERVICE_ABOVE_BREAKING(
      "The service capacity marked exceeds the breaking capacity: neither of the two is taken."),
  SETTINGS_CONTRADICT(
      "The settings marked cannot all be true of one device: none of those concerned is taken."),
  // cautions
  DESIGNERS_AID(
      "A designer's aid: local rules, the makers' data and a competent, where required licensed,"
          + " person decide."),
  WORK_DEAD("Work only on what is proved dead and locked off."),
  CHECKS_NOT_MADE("Not checked: surge protection, bonding, position of devices.");

  private final String text;

  NoteCode(String text) {
    this.text = text;
  }

  /** The code as the contract writes it. */
  public String code() {
    return CODES[ordinal()];
  }

  /** What it means. */
  public String text() {
    return text;
  }

  private static final String[] CODES = new String[values().length];

  static {
    for (NoteCode code : values()) {
      CODES[code.ordinal()] = code.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }
}
