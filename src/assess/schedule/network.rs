//! The critical path of activities that come after each other, hands or no hands.
//!
//! The method is Kelley and Walker's (1959): forward for the earliest, backward for the latest times; what has no
//! float is critical.

/// Something that takes time, with what it comes after.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Activity {
    /// How long it takes, in any unit, 0 or more.
    pub duration: f64,
    /// How long after its end before what follows may begin, 0 or more.
    pub wait: f64,
    /// Places of what it comes after.
    pub after: Vec<usize>,
}

/// When an activity can and must happen.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Times {
    pub earliest_start: f64,
    pub earliest_finish: f64,
    pub latest_start: f64,
    pub latest_finish: f64,
}

impl Times {
    /// By how much it may slip without anything ending later.
    pub fn float(self) -> f64 {
        self.latest_start - self.earliest_start
    }
}

/// The answer for a network.
#[derive(Clone, Debug, PartialEq)]
pub struct Network {
    pub times: Vec<Times>,
    /// When all of it, waits included, is over.
    pub end: f64,
    /// Places of one longest path, first activity first.
    pub path: Vec<usize>,
}

/// Activities that come after themselves, in the order of the circle.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Circle(pub Vec<usize>);

/// Activities in an order in which each comes after all that it needs; places outside the list are passed over.
///
/// # Errors
/// One circle, where there are any.
pub fn order(after: &[&[usize]]) -> Result<Vec<usize>, Circle> {
    let mut missing: Vec<usize> =
        after.iter().map(|firsts| firsts.iter().filter(|first| **first < after.len()).count()).collect();
    let mut followers = vec![Vec::new(); after.len()];
    for (at, firsts) in after.iter().enumerate() {
        for first in firsts.iter().filter(|first| **first < after.len()) {
            followers[*first].push(at);
        }
    }
    let mut order: Vec<usize> = (0..after.len()).filter(|at| missing[*at] == 0).collect();
    let mut reached = 0;
    while let Some(at) = order.get(reached).copied() {
        reached += 1;
        for later in &followers[at] {
            missing[*later] -= 1;
            if missing[*later] == 0 {
                order.push(*later);
            }
        }
    }
    match missing.iter().position(|missing| *missing > 0) {
        None => Ok(order),
        Some(stuck) => Err(circle_from(stuck, after, &missing)),
    }
}

/// Walks back from one that is stuck until a place comes again.
fn circle_from(stuck: usize, after: &[&[usize]], missing: &[usize]) -> Circle {
    let mut walked = vec![stuck];
    loop {
        let at = walked[walked.len() - 1];
        // What is stuck waits for something that is stuck.
        let Some(back) = after[at].iter().copied().find(|first| missing.get(*first).is_some_and(|left| *left > 0))
        else {
            return Circle(walked);
        };
        if let Some(begin) = walked.iter().position(|known| *known == back) {
            let mut circle = walked.split_off(begin);
            circle.reverse();
            return Circle(circle);
        }
        walked.push(back);
    }
}

/// Earliest and latest times and the critical path.
///
/// # Errors
/// One circle, where there are any.
pub fn network(activities: &[Activity]) -> Result<Network, Circle> {
    let after: Vec<&[usize]> = activities.iter().map(|activity| activity.after.as_slice()).collect();
    let order = order(&after)?;
    let mut times = vec![Times::default(); activities.len()];
    let mut by = vec![None; activities.len()];
    for at in &order {
        let activity = &activities[*at];
        for first in activity.after.iter().filter(|first| **first < activities.len()) {
            let free = times[*first].earliest_finish + activities[*first].wait;
            if free > times[*at].earliest_start || by[*at].is_none() {
                times[*at].earliest_start = times[*at].earliest_start.max(free);
                by[*at] = Some(*first);
            }
        }
        times[*at].earliest_finish = times[*at].earliest_start + activity.duration;
    }
    let over = |at: &usize| times[*at].earliest_finish + activities[*at].wait;
    let last = order.iter().copied().reduce(|one, other| if over(&other) > over(&one) { other } else { one });
    let end = last.map_or(0.0, |last| over(&last));
    let mut path = Vec::new();
    let mut back = last;
    while let Some(at) = back {
        path.push(at);
        back = by[at];
    }
    path.reverse();
    for at in 0..activities.len() {
        times[at].latest_finish = end - activities[at].wait;
    }
    for at in order.iter().rev() {
        times[*at].latest_start = times[*at].latest_finish - activities[*at].duration;
        for first in activities[*at].after.iter().filter(|first| **first < activities.len()) {
            let latest = times[*at].latest_start - activities[*first].wait;
            times[*first].latest_finish = times[*first].latest_finish.min(latest);
        }
    }
    Ok(Network { times, end, path })
}
