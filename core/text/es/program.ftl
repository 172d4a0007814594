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
