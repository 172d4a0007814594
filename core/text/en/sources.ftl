# Sources that figures, the rule graph and the procedures name: author, title, place.
# Of those that the rule graph lists, what its own files say.

source-ashrae-rp-908 = Heinonen et al., Assessment of antifreeze solutions for ground-source heat pump systems, ASHRAE RP-908, abstract
source-astm-f2164 = ASTM F2164, Standard practice for field leak testing of polyethylene pressure piping, scope and significance
source-dvgw-bore-tests = German gas and water trade press (wvgw), Pressure tests of borehole heat exchangers, parts 1 and 2
source-elasticity = S. Timoshenko and J. Goodier, Theory of Elasticity, § 28; allowed air: own estimate
source-epa-secondary = US EPA, Secondary drinking water standards, 40 CFR 143
source-ghp-northwest = ENERGY STAR Homes Northwest, Ground source heat pump design and installation standards, 2005, section 1.8
source-glycol-water-bulletins = Trade water-treatment bulletins on inhibited glycol (several agree): weak glycol feeds bacteria, dilution water limits
source-langes-handbook = Lange's Handbook of Chemistry, 15th ed., table 5.13
source-may-2018 = D. May et al., Movement of air pockets in pipes of 25 and 38 mm, International Journal of Hydraulic Engineering 7(3), 2018
source-melinder-2010 = A. Melinder, Properties of secondary working fluids for indirect systems, International Institute of Refrigeration, 2010
source-nbs-1973 = R. Battino and others, Solubility of gases in water, Journal of Research of the National Bureau of Standards 77A, 1973, table 3
source-pipe-standards = ASTM D3035 and F714, EN 12201-2, ASTM B88: dimensions of pipe
source-ppi-handbook = Plastics Pipe Institute, Handbook of Polyethylene Pipe, 2nd ed., chapter 3, appendix B
source-ppi-ign-4-01-03 = UK Water Industry, Information and Guidance Note 4-01-03, Pressure testing of polyethylene pipe, 2015
source-rafferty-1999 = K. Rafferty, Scaling in geothermal heat pump systems, Geo-Heat Center, 1999
source-swamee-jain = P. Swamee and A. Jain, J. Hydraul. Div. ASCE 102 (1976) 657
source-trade-standard = a North American trade standard for ground loops
source-two-phase-textbook = a textbook on flow of gas and liquid in pipes
source-ufgs-15741n = Unified Facilities Guide Specification 15741N, ground source heat pump systems, older edition, flushing and purging clauses
source-undercharge-tests = Energies 12(3) 545, 2019: refrigerant undercharge in a water-to-water heat pump
source-utility-loop-testing = Utility programme guide for ground source heat pumps, section Testing: start-up and minimum loop pressures, seasonal fall in summer
