# Texts of the rule graph: the call itself


## Mechanisms

mechanism-noticed-air-and-leaks = Se nota aire o una fuga
    .homeowner = El aire o el fluido perdido se hacen notar.
mechanism-noticed-pressure = Se nota una presión incorrecta
    .homeowner = Una presión incorrecta se hace notar.
mechanism-noticed-pumping = Se nota el bombeo débil
    .homeowner = Las bombas débiles se hacen notar.
mechanism-noticed-valves-and-circuits = Se nota un paso cerrado o equivocado
    .homeowner = Un paso cerrado o equivocado para el fluido se hace notar.
mechanism-noticed-dirt = Se nota suciedad o depósitos
    .homeowner = La suciedad o los depósitos se hacen notar.
mechanism-noticed-fluid-and-ground = Se nota el fluido equivocado o la falta de terreno
    .homeowner = El fluido equivocado o la falta de terreno se hacen notar.
mechanism-noticed-unit = Se nota una avería de la unidad
    .homeowner = Una avería de la unidad se hace notar.
mechanism-noticed-without-fault = Algo ordinario, o una lectura falsa, preocupa a alguien
    .homeowner = Algo ordinario, o una lectura falsa, causó preocupación.


## Findings

finding-call-made = Alguien llamó
    .homeowner = Usted llamó.


## Links

link-air-left-in-circuit--noticed-air-and-leaks = Se oye, y falta calor.
link-flush-too-weak--noticed-air-and-leaks = Se oye, y falta calor.
link-circulators-not-bled--noticed-air-and-leaks = Se oye, y falta calor.
link-leak-indoors--noticed-air-and-leaks = El manómetro baja o algo gotea.
link-leak-in-ground--noticed-air-and-leaks = El manómetro baja o algo gotea.
link-charge-left-too-low--noticed-pressure = Lo delata el manómetro, un circulador que zumba o una válvula que gotea.
link-pipe-never-relaxed--noticed-pressure = Lo delata el manómetro, un circulador que zumba o una válvula que gotea.
link-charged-cold-without-allowance--noticed-pressure = Lo delata el manómetro, un circulador que zumba o una válvula que gotea.
link-over-pressurised--noticed-pressure = Lo delata el manómetro, un circulador que zumba o una válvula que gotea.
link-expansion-tank-waterlogged--noticed-pressure = El manómetro oscila o el nivel baja.
link-expansion-tank-pre-charge-wrong--noticed-pressure = El manómetro oscila o el nivel baja.
link-reservoir-low--noticed-pressure = El manómetro oscila o el nivel baja.
link-reservoir-draws-air--noticed-pressure = El manómetro oscila o el nivel baja.
link-circulator-too-small--noticed-pumping = La unidad se para o calienta poco.
link-circulator-wrong-speed--noticed-pumping = La unidad se para o calienta poco.
link-one-circulator-dead--noticed-pumping = La unidad se para o calienta poco.
link-circulator-worn--noticed-pumping = La unidad se para o calienta poco.
link-circulators-opposed--noticed-pumping = La unidad se para o calienta poco.
link-check-valve-stuck-shut--noticed-pumping = La unidad se para o calienta poco.
link-check-valve-missing--noticed-pumping = La unidad se para o calienta poco.
link-three-way-valve-mis-set--noticed-valves-and-circuits = Con el paso cerrado o equivocado, la unidad se para o calienta poco.
link-isolation-valve-part-closed--noticed-valves-and-circuits = Con el paso cerrado o equivocado, la unidad se para o calienta poco.
link-supply-return-crossed--noticed-valves-and-circuits = Con el paso cerrado o equivocado, la unidad se para o calienta poco.
link-circuit-valved-off--noticed-valves-and-circuits = Con parte del lazo sin uso, el agua va muy fría o muy caliente.
link-circuit-kinked--noticed-valves-and-circuits = Con parte del lazo sin uso, el agua va muy fría o muy caliente.
link-circuit-air-locked--noticed-valves-and-circuits = Con parte del lazo sin uso, el agua va muy fría o muy caliente.
link-circuits-unbalanced--noticed-valves-and-circuits = Con parte del lazo sin uso, el agua va muy fría o muy caliente.
link-debris-left-in-loop--noticed-dirt = El caudal baja hasta que la unidad se para.
link-strainer-loaded--noticed-dirt = El caudal baja hasta que la unidad se para.
link-exchanger-loaded--noticed-dirt = El caudal baja hasta que la unidad se para.
link-unit-not-isolated-in-flush--noticed-dirt = El caudal baja hasta que la unidad se para.
link-scaling-fill-water--noticed-dirt = La unidad rinde menos y gasta más, año tras año.
link-iron-fill-water--noticed-dirt = La unidad rinde menos y gasta más, año tras año.
link-corrosion--noticed-dirt = La unidad rinde menos y gasta más, año tras año.
link-biological-fouling--noticed-dirt = La unidad rinde menos y gasta más, año tras año.
link-antifreeze-too-weak--noticed-fluid-and-ground = Con frío, la unidad se dispara o calienta poco.
link-antifreeze-too-strong--noticed-fluid-and-ground = Con frío, la unidad se dispara o calienta poco.
link-antifreeze-unmixed--noticed-fluid-and-ground = Con frío, la unidad se dispara o calienta poco.
link-antifreeze-wrong-kind--noticed-fluid-and-ground = Con frío, la unidad se dispara o calienta poco.
link-antifreeze-degraded--noticed-fluid-and-ground = Con frío, la unidad se dispara o calienta poco.
link-loop-too-short--noticed-fluid-and-ground = Al final de la temporada la casa queda fría o trabaja el calor auxiliar.
link-ground-conducts-poorly--noticed-fluid-and-ground = Al final de la temporada la casa queda fría o trabaja el calor auxiliar.
link-refrigerant-undercharge--noticed-unit = La unidad se para o las habitaciones quedan frías.
link-expansion-device-fault--noticed-unit = La unidad se para o las habitaciones quedan frías.
link-compressor-or-reversing-valve-weak--noticed-unit = La unidad se para o las habitaciones quedan frías.
link-air-filter-or-coil-dirty--noticed-unit = La unidad se para o las habitaciones quedan frías.
link-flow-switch-or-sensor-fault--noticed-unit = La unidad se para o las habitaciones quedan frías.
link-control-fault--noticed-unit = La unidad se para o las habitaciones quedan frías.
link-ordinary-relaxation--noticed-without-fault = Quien no sabe que es normal puede llamar por ello.
link-seasonal-swing--noticed-without-fault = Quien no sabe que es normal puede llamar por ello.
link-dial-gauge-lies--noticed-without-fault = Quien lo lee en casa lo cree y puede llamar.
link-unit-display-lies--noticed-without-fault = Quien lo lee en casa lo cree y puede llamar.
link-noticed-air-and-leaks--call-made = El ruido, un manómetro que baja o un piso mojado hacen llamar.
link-noticed-pressure--call-made = Un manómetro que parece mal o una bomba ruidosa hacen llamar.
link-noticed-pumping--call-made = Una unidad que se para hace llamar.
link-noticed-valves-and-circuits--call-made = Una unidad que se para o calienta poco hace llamar.
link-noticed-dirt--call-made = Una unidad que rinde cada vez menos hace llamar.
link-noticed-fluid-and-ground--call-made = Los disparos y una casa fría hacen llamar.
link-noticed-unit--call-made = Una casa que no se mantiene caliente hace llamar.
link-noticed-without-fault--call-made = Una preocupación también es razón para llamar.
