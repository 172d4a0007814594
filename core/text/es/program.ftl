# Words of the headless program.
program-visit-file-good = { $path }: archivo de visita correcto.
program-faults = { $path }: { $count ->
    [one] un error
   *[other] { $count } errores
}
program-pdf-written = Informe: { $path }
program-stored = Guardado en: { $path }
program-causes = Causas (cada una por sí sola; pueden darse varias a la vez)
program-reasons = Por qué: { $cause }
program-sound = Lo que se halló como debe ser
program-unexplained = Lo que esto explica solo en parte, a lo sumo
program-doubted = Instrumentos en duda
program-unused = Sin usar
program-next = Próximas comprobaciones
program-could-check = Aún se podría mirar
program-tools = Herramientas
program-prior = Antes de saber nada: { $share } de los avisos [{ $source }]
program-facts = Lo que se sabe de la instalación y su puesta en marcha (factor sobre las probabilidades si es así / si no lo es)
program-links = { $from } provoca, cada cosa con esta probabilidad cuando está sola (↓ bajo, ↑ alto)
program-links-left = { $count } enlaces más adelante: añadir --whole.
program-cause-names = Causas: { $names }
program-plan = Plan
program-proof = Prueba
program-records = Lo que el registro aún no permite
program-assumed = Supuesto
program-already-there = { $path } ya existe. Una flota inventada necesita una base de datos nueva, para que nunca se mezcle con avisos reales.
program-invented = Inventado: { $visits } visitas en { $systems } sistemas, en { $path }
program-board-causes = Causas de las rellamadas
program-board-repeats = Volvieron
program-board-waiting = Primera rellamada
program-board-rates = Rellamadas por grupo
program-board-differences = Qué acompaña a cada causa
program-board-fixes = ¿Aguantaron las reparaciones?
program-cause = causa
program-graph-good = Todas las comprobaciones superadas: { $counts }.
program-count-causes = { $count } causas
program-count-mechanisms = { $count } mecanismos
program-count-findings = { $count } hallazgos
program-count-links = { $count } enlaces
program-count-checks = { $count } comprobaciones
program-count-procedures = { $count } procedimientos
program-count-steps = { $count } pasos
