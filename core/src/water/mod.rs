//! Fill-water quality: indices and guideline verdicts.
