//! Pipes, fittings, exchangers, pumps; head loss, flow distribution, purging.
