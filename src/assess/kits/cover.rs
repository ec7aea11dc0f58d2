//! The lightest choice of sets that covers every element: exact, by branch and bound.
//!
//! What cannot change the answer is taken out first, again and again until nothing more goes: a set that lies within
//! another that is no heavier; an element that is covered whenever another one is; and where only one set holds an
//! element, that set is chosen. What is left falls into pieces that share no set; each is searched by itself. The
//! bound is that of the dual: elements are given prices such that no set's elements cost more than it weighs; no
//! cover is lighter than all prices together.

use std::rc::Rc;

/// What was chosen.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Cover {
    /// Places of the sets, ascending.
    pub chosen: Vec<u32>,
    pub weight: u64,
    /// No cover is lighter; equal to `weight` where the choice is known to be the lightest.
    pub bound: u64,
    /// Nodes of the search that were looked at.
    pub nodes: u64,
}

/// A set of small numbers.
type Bits = Vec<u64>;

fn bits(length: usize) -> Bits {
    vec![0; length.div_ceil(64)]
}

fn put(bits: &mut Bits, at: usize) {
    bits[at / 64] |= 1 << (at % 64);
}

fn holds(bits: &Bits, at: usize) -> bool {
    bits[at / 64] >> (at % 64) & 1 == 1
}

fn is_within(inner: &Bits, outer: &Bits) -> bool {
    inner.iter().zip(outer).all(|(inner, outer)| inner & !outer == 0)
}

fn count(bits: &Bits) -> u32 {
    bits.iter().map(|word| word.count_ones()).sum()
}

fn each(bits: &Bits) -> impl Iterator<Item = usize> + '_ {
    bits.iter().enumerate().flat_map(|(at, word)| {
        let mut word = *word;
        std::iter::from_fn(move || {
            let next = (word != 0).then(|| at * 64 + word.trailing_zeros() as usize);
            word &= word.wrapping_sub(1);
            next
        })
    })
}

/// The lightest cover of elements `0..elements` by sets of them, each with its weight above 0; the lightest found and
/// its bound where `patience`, counted in nodes of the search, ran out. An element that no set holds is passed over.
pub fn cover(sets: &[Vec<u32>], weights: &[u64], elements: usize, patience: u64) -> Cover {
    let mut whole = Cover { chosen: Vec::new(), weight: 0, bound: 0, nodes: 0 };
    let all =
        Piece { names: (0..sets.len() as u32).collect(), sets: sets.to_vec(), weights: weights.to_vec(), elements };
    let mut pieces = all.split();
    while let Some(piece) = pieces.pop() {
        let mut state = State::of(&piece);
        let mut chosen = Vec::new();
        state.reduce(&mut chosen);
        let own: u64 = chosen.iter().map(|set| piece.weights[*set]).sum();
        whole.weight += own;
        whole.bound += own;
        whole.chosen.extend(chosen.iter().map(|set| piece.names[*set]));
        let left = state.left(&piece).split();
        match <[Piece; 1]>::try_from(left) {
            Ok([piece]) => search(&piece, patience, &mut whole),
            Err(more) => pieces.extend(more),
        }
    }
    whole.chosen.sort_unstable();
    whole
}

/// Searches a piece that falls into no smaller ones.
fn search(piece: &Piece, patience: u64, whole: &mut Cover) {
    let state = State::of(piece);
    let bound = state.bound();
    let mut search = Search { best: Vec::new(), best_weight: u64::MAX, nodes: 0, patience };
    search.node(state, Vec::new(), 0);
    whole.nodes += search.nodes;
    whole.weight += search.best_weight;
    whole.bound += if search.nodes < patience { search.best_weight } else { bound };
    whole.chosen.extend(search.best.iter().map(|set| piece.names[*set]));
}

/// Sets and elements that belong together, numbered from 0.
struct Piece {
    /// What each set is called outside.
    names: Vec<u32>,
    sets: Vec<Vec<u32>>,
    weights: Vec<u64>,
    elements: usize,
}

impl Piece {
    /// Pieces that share no set.
    fn split(self) -> Vec<Self> {
        let mut head: Vec<u32> = (0..self.elements as u32).collect();
        for set in &self.sets {
            for pair in set.windows(2) {
                let (one, other) = (top(&mut head, pair[0]), top(&mut head, pair[1]));
                head[one as usize] = other;
            }
        }
        let mut place: Vec<Option<usize>> = vec![None; self.elements];
        let mut number: Vec<Option<u32>> = vec![None; self.elements];
        let mut pieces: Vec<Self> = Vec::new();
        for (at, set) in self.sets.into_iter().enumerate().filter(|(_, set)| !set.is_empty()) {
            let of = top(&mut head, set[0]) as usize;
            let piece = *place[of].get_or_insert_with(|| {
                pieces.push(Self { names: Vec::new(), sets: Vec::new(), weights: Vec::new(), elements: 0 });
                pieces.len() - 1
            });
            let piece = &mut pieces[piece];
            let mut numbered = |element: u32| {
                *number[element as usize].get_or_insert_with(|| {
                    piece.elements += 1;
                    piece.elements as u32 - 1
                })
            };
            let set: Vec<u32> = set.into_iter().map(&mut numbered).collect();
            piece.names.push(self.names[at]);
            piece.weights.push(self.weights[at]);
            piece.sets.push(set);
        }
        pieces
    }
}

/// The head of the elements that one belongs to; the way there is made shorter.
fn top(head: &mut [u32], mut at: u32) -> u32 {
    while head[at as usize] != at {
        head[at as usize] = head[head[at as usize] as usize];
        at = head[at as usize];
    }
    at
}

/// What is still to be covered, and by what.
#[derive(Clone)]
struct State {
    weights: Rc<Vec<u64>>,
    /// Of each set its elements, those that are out emptied.
    sets: Vec<Bits>,
    /// Of each element its sets.
    of: Vec<Bits>,
    /// Elements still to be covered.
    open: Bits,
    /// Sets that may still be chosen.
    live: Bits,
}

impl State {
    fn of(piece: &Piece) -> Self {
        let Piece { sets, weights, elements, .. } = piece;
        let mut state = Self {
            weights: Rc::new(weights.clone()),
            sets: vec![bits(*elements); sets.len()],
            of: vec![bits(sets.len()); *elements],
            open: bits(*elements),
            live: bits(sets.len()),
        };
        for (at, set) in sets.iter().enumerate() {
            for element in set {
                put(&mut state.sets[at], *element as usize);
                put(&mut state.of[*element as usize], at);
                put(&mut state.open, *element as usize);
            }
            if !set.is_empty() {
                put(&mut state.live, at);
            }
        }
        state
    }

    fn drop_set(&mut self, set: usize) {
        self.live[set / 64] &= !(1 << (set % 64));
        for element in each(&std::mem::take(&mut self.sets[set])) {
            self.of[element][set / 64] &= !(1 << (set % 64));
        }
        self.sets[set] = bits(self.of.len());
    }

    fn drop_element(&mut self, element: usize) {
        self.open[element / 64] &= !(1 << (element % 64));
        let length = self.sets.len();
        for set in each(&std::mem::replace(&mut self.of[element], bits(length))) {
            self.sets[set][element / 64] &= !(1 << (element % 64));
            if self.sets[set].iter().all(|word| *word == 0) {
                self.live[set / 64] &= !(1 << (set % 64));
            }
        }
    }

    fn choose(&mut self, set: usize) {
        for element in each(&self.sets[set].clone()) {
            self.drop_element(element);
        }
    }

    /// Takes out what cannot change the answer; sets that must be chosen go to `chosen`. `false` when an element can
    /// no longer be covered.
    fn reduce(&mut self, chosen: &mut Vec<usize>) -> bool {
        loop {
            let mut again = false;
            for element in each(&self.open.clone()) {
                if !holds(&self.open, element) {
                    continue;
                }
                match count(&self.of[element]) {
                    0 => return false,
                    1 => {
                        let set = each(&self.of[element]).next().unwrap_or_default();
                        chosen.push(set);
                        self.choose(set);
                        again = true;
                    }
                    _ => {}
                }
            }
            again |= self.drop_lesser_sets();
            again |= self.drop_implied_elements();
            if !again {
                return true;
            }
        }
    }

    /// A set within another that is no heavier is never needed.
    fn drop_lesser_sets(&mut self) -> bool {
        let mut any = false;
        for set in each(&self.live.clone()) {
            // Whatever holds all of it holds its rarest element.
            let rarest = each(&self.sets[set]).min_by_key(|element| count(&self.of[*element]));
            let Some(rarest) = rarest else { continue };
            let (weight, own) = (self.weights[set], &self.sets[set]);
            let is_lesser = each(&self.of[rarest]).any(|other| {
                let theirs = self.weights[other];
                other != set
                    && theirs <= weight
                    && is_within(own, &self.sets[other])
                    && (theirs < weight || other < set || own != &self.sets[other])
            });
            if is_lesser {
                self.drop_set(set);
                any = true;
            }
        }
        any
    }

    /// An element all of whose sets' choices cover another one: that other one need not be asked for.
    fn drop_implied_elements(&mut self) -> bool {
        let mut any = false;
        for element in each(&self.open.clone()) {
            let own = &self.of[element];
            let implied = each(&self.open).any(|other| {
                other != element && is_within(&self.of[other], own) && (other < element || own != &self.of[other])
            });
            if implied {
                self.drop_element(element);
                any = true;
            }
        }
        any
    }

    /// What is left, under the names of the piece that it is left of.
    fn left(&self, piece: &Piece) -> Piece {
        let live: Vec<usize> = each(&self.live).collect();
        Piece {
            names: live.iter().map(|set| piece.names[*set]).collect(),
            sets: live.iter().map(|set| each(&self.sets[*set]).map(|element| element as u32).collect()).collect(),
            weights: live.iter().map(|set| piece.weights[*set]).collect(),
            elements: piece.elements,
        }
    }

    /// Prices of elements that no set's weight falls short of, together.
    fn bound(&self) -> u64 {
        let mut rest: Vec<u64> = self.weights.to_vec();
        let mut elements: Vec<usize> = each(&self.open).collect();
        elements.sort_by_key(|element| count(&self.of[*element]));
        let mut bound = 0;
        for element in elements {
            let price = each(&self.of[element]).map(|set| rest[set]).min().unwrap_or(0);
            if price > 0 {
                each(&self.of[element]).for_each(|set| rest[set] -= price);
                bound += price;
            }
        }
        bound
    }
}

struct Search {
    best: Vec<usize>,
    best_weight: u64,
    nodes: u64,
    patience: u64,
}

impl Search {
    fn node(&mut self, mut state: State, mut chosen: Vec<usize>, mut weight: u64) {
        if self.nodes >= self.patience && self.best_weight < u64::MAX {
            return;
        }
        self.nodes += 1;
        let before = chosen.len();
        if !state.reduce(&mut chosen) {
            return;
        }
        weight += chosen[before..].iter().map(|set| state.weights[*set]).sum::<u64>();
        if weight >= self.best_weight {
            return;
        }
        let hardest = each(&state.open).min_by_key(|element| count(&state.of[*element]));
        let Some(hardest) = hardest else {
            (self.best, self.best_weight) = (chosen, weight);
            return;
        };
        if weight + state.bound() >= self.best_weight {
            return;
        }
        let mut sets: Vec<usize> = each(&state.of[hardest]).collect();
        sets.sort_by_key(|set| (std::cmp::Reverse(count(&state.sets[*set])), state.weights[*set]));
        for set in sets {
            let mut next = state.clone();
            let mut with = chosen.clone();
            with.push(set);
            next.choose(set);
            self.node(next, with, weight + state.weights[set]);
            // Tried: what follows does without it.
            state.drop_set(set);
        }
    }
}
