//! Statistics of the fleet against lifelines, statsmodels and SciPy; the laws of
//! merging over random histories; and exchange files that must be refused.

mod company;
mod devices;
mod figures;
mod files;
mod merging;
