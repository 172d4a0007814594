# Words of the headless program.
program-visit-file-good = { $path }: archivo de visita correcto.
program-faults = { $path }: { $count ->
    [one] un error
   *[other] { $count } errores
}
program-pdf-written = Informe: { $path }
program-stored = Guardado en: { $path }
program-causes = Causas
program-reasons = Por qué
program-next = Próximas comprobaciones
program-plan = Plan
program-proof = Prueba
program-assumed = Supuesto
program-cause = causa
program-graph-good = Todas las comprobaciones superadas: { $counts }.
program-count-causes = { $count } causas
program-count-mechanisms = { $count } mecanismos
program-count-findings = { $count } hallazgos
program-count-links = { $count } enlaces
program-count-checks = { $count } comprobaciones
program-count-procedures = { $count } procedimientos
program-count-steps = { $count } pasos
