//! The best of what is left once nothing ties parts together any more: exact, by dynamic programming over minutes.
//!
//! With the set-ups decided, pieces of one part hang together and parts do not. Each such group has a few sets that it
//! can add; of each group one set is taken, which is a knapsack with choices. The price of a minute, known from the
//! bound, rules most sets out beforehand: a set that loses more against its group's best than the bound has to spare
//! cannot be part of a better choice.

use super::choose::Piece;

/// Most sets of one group that are gone through.
const MOST_SETS: usize = 4096;

/// What is to be finished.
pub struct Rest<'a> {
    pub pieces: &'a [Piece],
    /// Places of what is free, each after those that it comes after; whatever else they come after is chosen.
    pub free: &'a [usize],
    /// Minutes there are.
    pub room: i64,
    /// The price of a minute as a fraction: worth for minutes.
    pub price: (i64, i64),
    /// Only what is worth more than this is of use.
    pub beats: i64,
}

/// A set that a group can add: its minutes, its worth, and which of the group's members are in it.
#[derive(Clone, Copy)]
struct Addition {
    minutes: i64,
    worth: i64,
    members: u64,
}

/// The best set worth more than `beats`, if there is any.
///
/// # Errors
/// The members of a group that has too many sets to go through.
pub fn finish(rest: &Rest) -> Result<Option<Vec<usize>>, Vec<usize>> {
    let (rise, run) = rest.price;
    let mut groups: Vec<(Vec<usize>, Vec<Addition>)> = Vec::new();
    for group in groups_of(rest) {
        match sets(&group, rest) {
            Some(options) => groups.push((group, options)),
            None => return Err(group),
        }
    }
    let value = |option: &Addition| option.worth * run - option.minutes * rise;
    let best = |options: &[Addition]| options.iter().map(value).max().unwrap_or(0);
    let bound: i64 = groups.iter().map(|(_, options)| best(options)).sum::<i64>() + rest.room * rise;
    // In parts of a worth: what may be lost without falling to `beats`.
    let spare = bound - (rest.beats + 1) * run;
    if spare < 0 {
        return Ok(None);
    }
    let (mut base_minutes, mut base_worth, mut chosen) = (0, 0, Vec::new());
    let mut open: Vec<(Vec<usize>, Vec<Addition>)> = Vec::new();
    for (group, mut options) in groups {
        let best = best(&options);
        options.retain(|option| best - value(option) <= spare);
        if let [only] = options[..] {
            base_minutes += only.minutes;
            base_worth += only.worth;
            chosen.extend(members(&group, only.members));
        } else {
            open.push((group, options));
        }
    }
    let room = rest.room - base_minutes;
    if room < 0 {
        return Ok(None);
    }
    let (worth, more) = knapsack(&open, room as usize);
    chosen.extend(more);
    Ok((base_worth + worth > rest.beats).then_some(chosen))
}

fn members(group: &[usize], mask: u64) -> impl Iterator<Item = usize> + '_ {
    group.iter().enumerate().filter(move |(at, _)| mask & (1 << at) != 0).map(|(_, piece)| *piece)
}

/// Free pieces that hang together, each group in the order of `free`.
fn groups_of(rest: &Rest) -> Vec<Vec<usize>> {
    let mut place = std::collections::HashMap::with_capacity(rest.free.len());
    rest.free.iter().enumerate().for_each(|(own, at)| {
        place.insert(*at, own);
    });
    // Each points to an earlier one of its group, or to itself.
    let mut root: Vec<usize> = (0..rest.free.len()).collect();
    fn find(root: &mut [usize], mut own: usize) -> usize {
        while root[own] != own {
            root[own] = root[root[own]];
            own = root[own];
        }
        own
    }
    for (own, at) in rest.free.iter().enumerate() {
        for first in rest.pieces[*at].after.iter().filter_map(|first| place.get(first)) {
            let (one, other) = (find(&mut root, own), find(&mut root, *first));
            root[one.max(other)] = one.min(other);
        }
    }
    let mut groups: Vec<Vec<usize>> = vec![Vec::new(); rest.free.len()];
    for (own, at) in rest.free.iter().enumerate() {
        let group = find(&mut root, own);
        groups[group].push(*at);
    }
    groups.retain(|group| !group.is_empty());
    groups
}

/// The sets that a group can add: of those with the same minutes the one worth most, and none that is worth no more
/// than a shorter one. `None` where there are too many.
fn sets(group: &[usize], rest: &Rest) -> Option<Vec<Addition>> {
    if group.len() > 64 {
        return None;
    }
    let mut sets = vec![Addition { minutes: 0, worth: 0, members: 0 }];
    for (own, at) in group.iter().enumerate() {
        let piece = &rest.pieces[*at];
        let firsts = group.iter().enumerate().filter(|(_, member)| piece.after.contains(member));
        let wanted = firsts.fold(0_u64, |mask, (first, _)| mask | (1 << first));
        for with in 0..sets.len() {
            let set = sets[with];
            let minutes = set.minutes + i64::from(piece.minutes);
            if set.members & wanted == wanted && minutes <= rest.room {
                let worth = set.worth + i64::from(piece.worth);
                sets.push(Addition { minutes, worth, members: set.members | (1 << own) });
            }
        }
        if sets.len() > MOST_SETS {
            return None;
        }
    }
    sets.sort_by_key(|set| (set.minutes, -set.worth));
    let mut most = -1;
    sets.retain(|set| {
        let more = set.worth > most;
        most = most.max(set.worth);
        more
    });
    Some(sets)
}

/// One set of each group within `room` minutes: the most they are worth together, and their members.
fn knapsack(groups: &[(Vec<usize>, Vec<Addition>)], room: usize) -> (i64, Vec<usize>) {
    let mut worth = vec![0_i64; room + 1];
    let mut taken: Vec<Vec<u16>> = Vec::with_capacity(groups.len());
    for (_, options) in groups {
        let mut next = vec![i64::MIN; room + 1];
        let mut which = vec![0_u16; room + 1];
        for (at, option) in options.iter().enumerate() {
            let minutes = option.minutes as usize;
            for total in minutes..=room {
                let before = worth[total - minutes];
                if before != i64::MIN && before + option.worth > next[total] {
                    next[total] = before + option.worth;
                    which[total] = at as u16;
                }
            }
        }
        worth = next;
        taken.push(which);
    }
    if worth[room] == i64::MIN {
        return (i64::MIN / 2, Vec::new());
    }
    let (best, mut total, mut chosen) = (worth[room], room, Vec::new());
    for ((group, options), which) in groups.iter().zip(&taken).rev() {
        let option = options[usize::from(which[total])];
        chosen.extend(members(group, option.members));
        total -= option.minutes as usize;
    }
    (best, chosen)
}
