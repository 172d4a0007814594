# Fuentes que nombran las cifras, el grafo de reglas y los procedimientos. Los títulos
# de lo publicado quedan en su idioma; lo demás se dice en español.

source-ashrae-rp-908 = Heinonen et al., Assessment of antifreeze solutions for ground-source heat pump systems, ASHRAE RP-908, resumen
source-astm-f2164 = ASTM F2164, Standard practice for field leak testing of polyethylene pressure piping, alcance y significado
source-dvgw-bore-tests = Prensa técnica alemana del gas y del agua (wvgw), pruebas de presión de sondas geotérmicas, partes 1 y 2
source-elasticity = S. Timoshenko y J. Goodier, Theory of Elasticity, § 28; aire permitido: estimación propia
source-epa-secondary = US EPA, Secondary drinking water standards, 40 CFR 143
source-ghp-northwest = ENERGY STAR Homes Northwest, Ground source heat pump design and installation standards, 2005, sección 1.8
source-glycol-water-bulletins = Boletines del oficio sobre tratamiento del agua para glicol inhibido (varios coinciden): el glicol pobre alimenta bacterias, límites del agua de dilución
source-langes-handbook = Lange's Handbook of Chemistry, 15.ª ed., tabla 5.13
source-may-2018 = D. May et al., Movement of air pockets in pipes of 25 and 38 mm, International Journal of Hydraulic Engineering 7(3), 2018
source-melinder-2010 = A. Melinder, Properties of secondary working fluids for indirect systems, International Institute of Refrigeration, 2010
source-nbs-1973 = R. Battino y otros, Solubility of gases in water, Journal of Research of the National Bureau of Standards 77A, 1973, tabla 3
source-pipe-standards = ASTM D3035 y F714, EN 12201-2, ASTM B88: dimensiones de tubería
source-ppi-handbook = Plastics Pipe Institute, Handbook of Polyethylene Pipe, 2.ª ed., capítulo 3, apéndice B
source-ppi-ign-4-01-03 = UK Water Industry, Information and Guidance Note 4-01-03, Pressure testing of polyethylene pipe, 2015
source-rafferty-1999 = K. Rafferty, Scaling in geothermal heat pump systems, Geo-Heat Center, 1999
source-swamee-jain = P. Swamee y A. Jain, J. Hydraul. Div. ASCE 102 (1976) 657
source-trade-standard = una norma norteamericana del oficio para lazos geotérmicos
source-two-phase-textbook = un libro de texto sobre flujo de gas y líquido en tuberías
source-ufgs-15741n = Unified Facilities Guide Specification 15741N, ground source heat pump systems, edición anterior, cláusulas de lavado y purga
source-undercharge-tests = Energies 12(3) 545, 2019: falta de refrigerante en una bomba de calor agua-agua
source-utility-loop-testing = Guía de un programa de una compañía eléctrica para bombas de calor geotérmicas, sección sobre pruebas: presiones del lazo al arrancar y mínimas, bajada estacional en verano
