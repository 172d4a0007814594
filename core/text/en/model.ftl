# What the model assumes for want of a record, and how figures are vouched for.

assumption-sea-level = The site is taken to lie at sea level.
assumption-capacity-unknown = The size of the heat pump is unknown; 4 tons are assumed, very loosely.
assumption-efficiency-usual = The rated efficiency is unknown; a usual one is assumed.
assumption-flow-by-capacity = The flow the unit asks for is unknown; { AMOUNT("3 gpm") } per ton are assumed.
assumption-circuits-unknown = The circuits in the ground are unknown.
assumption-volume-by-capacity = The volume of the loop is estimated from the capacity, loosely.
assumption-headers-unknown = Headers and indoor pipe are unknown; a share of the circuits is added.
assumption-pipe-ratio-usual = The wall of the pipe is unknown; SDR 11 is assumed.
assumption-fluid-unknown = The fluid is unknown.
assumption-strength-unknown = The strength of the antifreeze is unknown; about 20 % by volume is assumed, loosely.
assumption-flow-centre-unknown = The kind of flow centre is unknown.
assumption-flow-centre-closed = The flow centre is not recorded. The pressure at rest shows that it is a closed one.

authority-from-memory = { $source } (from memory)
authority-common-practice = common practice, no source
authority-judgement = own estimate
authority-memory-only = from memory
