use returnline_core::api::{Wording, read_visit_file};
use returnline_core::diagnosis::{CauseKind, Inference};
use returnline_tests::handed::handed_over;
use returnline_tests::simulator::trial::{case, graph};
fn main() {
    let folder = std::env::args().nth(1).unwrap();
    let limit: usize = std::env::args().nth(2).unwrap().parse().unwrap();
    let g = graph();
    let _ = (read_visit_file as fn(_, Wording) -> _,);
    let (mut n, mut a1, mut a3, mut b1, mut b3, mut agree) = (0, 0, 0, 0, 0, 0);
    let mut mix = [0; 11];
    for (truth, file) in handed_over(std::path::Path::new(&folder)).take(limit) {
        if truth.truth.len() != 1 {
            continue;
        }
        let t = truth.truth[0].as_str();
        if t == "ordinary-relaxation" || t == "seasonal-swing" {
            continue;
        }
        let base = case(&file);
        let inf = Inference::new(g, &base).unwrap();
        let faults: Vec<_> = g
            .cause_places()
            .filter(|&c| matches!(g.cause(c).kind, CauseKind::Loop | CauseKind::Unit))
            .collect();
        let mut s = Vec::new();
        for &c in &faults {
            let p = inf.prior(c);
            if p <= 0.0 || inf.cause(c) < 1e-5 {
                s.push((f64::NEG_INFINITY, inf.cause(c), c));
                continue;
            }
            let mut other = base.clone();
            for &d in &faults {
                if d != c {
                    other.priors.insert(g.cause(d).id.clone(), 1e-9);
                }
            }
            other.found.clear();
            let i2 = Inference::new(g, &other).unwrap();
            s.push((i2.log_evidence() + i2.cause(c).ln(), inf.cause(c), c));
        }
        n += 1;
        let place = |key: &dyn Fn(&(f64, f64, _)) -> f64| {
            let mut o: Vec<_> = s.iter().collect();
            o.sort_by(|x, y| key(y).total_cmp(&key(x)));
            (
                o.iter()
                    .position(|x: &&(f64, f64, returnline_core::diagnosis::CauseIx)| {
                        g.cause(x.2).id.as_str() == t
                    })
                    .unwrap(),
                g.cause(o[0].2).id.as_str().to_owned(),
            )
        };
        let (pa, na) = place(&|x| x.1);
        let (pb, nb) = place(&|x| x.0);
        a1 += usize::from(pa == 0);
        a3 += usize::from(pa < 3);
        b1 += usize::from(pb == 0);
        b3 += usize::from(pb < 3);
        agree += usize::from(na == nb);
        let m = s.iter().map(|x| x.0).fold(f64::NEG_INFINITY, f64::max);
        let z: f64 = s.iter().map(|x| (x.0 - m).exp()).sum();
        for (k, slot) in mix.iter_mut().enumerate() {
            let w = k as f64 / 10.0;
            let (p, _) = place(&|x| (1.0 - w) * x.1 + w * (x.0 - m).exp() / z);
            *slot += usize::from(p == 0);
        }
    }
    let p = |x: usize| 100.0 * x as f64 / n as f64;
    println!(
        "{folder} n {n} marginal {:.1} {:.1} single {:.1} {:.1} agree {:.1} mix {:?}",
        p(a1),
        p(a3),
        p(b1),
        p(b3),
        p(agree),
        mix.map(|x| (10.0 * p(x)).round() / 10.0)
    );
}
