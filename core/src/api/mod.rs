//! Use cases: the one typed boundary that the shell and the headless program call.
