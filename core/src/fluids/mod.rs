//! Properties of water and of aqueous antifreeze solutions.
