//! Report content as data, and the pages made from it.
