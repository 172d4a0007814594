use super::*;

/// Sums the product of all tables by going through every assignment.
fn by_enumeration(cards: &[usize], tables: &[Table], unary: &[Weights]) -> (f64, Vec<Weights>) {
    let mut total = 0.0;
    let mut by_state = vec![[0.0; MAX_STATES]; cards.len()];
    let cells: usize = cards.iter().product();
    for cell in 0..cells {
        let mut left = cell;
        let states: Vec<usize> = cards
            .iter()
            .map(|&card| {
                let state = left % card;
                left /= card;
                state
            })
            .collect();
        let mut product: f64 = states
            .iter()
            .zip(unary)
            .map(|(&state, weights)| weights[state])
            .product();
        for table in tables {
            let at = table
                .scope
                .iter()
                .fold(0, |at, &v| at * cards[v] + states[v]);
            product *= table.values[at];
        }
        total += product;
        for (weights, &state) in by_state.iter_mut().zip(&states) {
            weights[state] += product;
        }
    }
    (
        total,
        by_state
            .iter()
            .map(|weights| weights.map(|w| w / total))
            .collect(),
    )
}

#[test]
fn sums_and_beliefs_equal_enumeration() {
    let cards = vec![2, 3, 2, 4, 2, 2];
    let table = |scope: &[usize], seed: u64| {
        let size: usize = scope.iter().map(|&v| cards[v]).product();
        let mut state = seed;
        let values = (0..size)
            .map(|_| {
                state = state
                    .wrapping_mul(6364136223846793005)
                    .wrapping_add(1442695040888963407);
                (state >> 40) as f64 / (1u64 << 24) as f64
            })
            .collect();
        Table {
            scope: scope.to_vec(),
            values,
        }
    };
    let fixed = [table(&[0, 1], 1), table(&[1, 2, 3], 2), table(&[5], 6)];
    let evidence = [table(&[3, 0], 3), table(&[4, 1], 4)];
    let unary: Vec<Weights> = (0..6).map(|v| [0.3, 0.7, 0.1 * v as f64, 0.2]).collect();
    let tree = Tree::compile(cards.clone(), &fixed, &evidence);
    let mut room = Workspace::default();
    tree.prepare(&mut room);
    for (slot, table) in evidence.iter().enumerate() {
        tree.set_evidence(&mut room, slot, &table.values);
    }
    let log_sum = tree.inward(&mut room, &unary).expect("possible");
    tree.outward(&mut room, true);
    let all: Vec<Table> = fixed.iter().chain(&evidence).cloned().collect();
    let (sum, beliefs) = by_enumeration(&cards, &all, &unary);
    assert!((log_sum - sum.ln()).abs() < 1e-13);
    for (got, want) in room.beliefs.iter().zip(&beliefs) {
        for (got, want) in got.iter().zip(want) {
            assert!((got - want).abs() < 1e-14, "{got} {want}");
        }
    }
}

#[test]
fn a_sounding_equals_summing_anew() {
    let cards = vec![2; 7];
    let table = |scope: &[usize], seed: f64| {
        let cells = 1_usize << scope.len();
        Table {
            scope: scope.to_vec(),
            values: (0..cells)
                .map(|at| (seed * (at + 1) as f64).sin().abs())
                .collect(),
        }
    };
    // Two trees: 0 to 4 and 5, 6; a state without weight; an uneven message.
    let fixed = [
        table(&[0, 1], 1.0),
        table(&[1, 2], 2.0),
        table(&[2, 3], 3.0),
        table(&[2, 4], 4.0),
        table(&[5, 6], 5.0),
    ];
    let evidence = [table(&[1, 3], 6.0), table(&[6], 7.0)];
    let mut unary: Vec<Weights> = (0..7).map(|v| [0.4, 0.1 * v as f64, 0.0, 0.0]).collect();
    unary[3] = [1.0, 1e-9, 0.0, 0.0];
    let tree = Tree::compile(cards.clone(), &fixed, &evidence);
    let mut settled = Workspace::default();
    tree.prepare(&mut settled);
    for (slot, table) in evidence.iter().enumerate() {
        tree.set_evidence(&mut settled, slot, &table.values);
    }
    tree.inward(&mut settled, &unary).expect("possible");
    tree.outward(&mut settled, true);
    let all: Vec<Table> = fixed.iter().chain(&evidence).cloned().collect();
    let (base, _) = by_enumeration(&cards, &all, &unary);
    let questions: [&[(usize, [f64; 2])]; 8] = [
        &[],
        &[(3, [1.0, 0.2])],
        &[(0, [1.0, 0.0]), (4, [0.3, 1.0])],
        &[(0, [1.0, 0.4]), (6, [0.0, 1.0])],
        &[(1, [1.0, 0.5]), (1, [0.5, 1.0]), (2, [0.2, 0.9])],
        &[(3, [0.0, 1.0])],
        &[(5, [1.0, 0.5]), (2, [1.0, 0.5]), (4, [1.0, 0.5])],
        &[(0, [0.0, 1.0])],
    ];
    let mut room = Sounding::default();
    // Twice over, since what one leaves in the room must not touch the next.
    for factors in questions.iter().chain(&questions) {
        let mut weighted = unary.clone();
        for &(variable, [no, yes]) in *factors {
            weighted[variable][0] *= no;
            weighted[variable][1] *= yes;
        }
        let want = by_enumeration(&cards, &all, &weighted).0 / base;
        let got = tree.sound(&settled, &mut room, factors);
        assert!(
            (got - want).abs() <= 1e-13 * want,
            "{factors:?}: {got} {want}"
        );
    }
}

#[test]
fn impossible_evidence_is_told() {
    let evidence = [Table {
        scope: vec![0],
        values: vec![0.0, 0.0],
    }];
    let tree = Tree::compile(vec![2], &[], &evidence);
    let mut room = Workspace::default();
    tree.prepare(&mut room);
    tree.set_evidence(&mut room, 0, &evidence[0].values);
    assert_eq!(tree.inward(&mut room, &[[0.5, 0.5, 0.0, 0.0]]), None);
}
