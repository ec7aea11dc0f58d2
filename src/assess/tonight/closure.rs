//! The largest closure: of the sets that hold with each piece all it comes after, one of the greatest worth together.
//!
//! Picard's construction (Management Science 22, 1976): what is worth something is fed by the source, what costs
//! something drains to the sink, and a piece is tied to what it comes after; the side of the source in a least cut is
//! the closure. The cut is found by Dinic's method.

use super::choose::Piece;

/// The graph of the free pieces of one node; its ties stay while prices change.
pub struct Closure<'a> {
    pieces: &'a [Piece],
    /// Places in the list of pieces.
    members: &'a [usize],
    /// Arcs by their tail: first arc of each vertex, then the next of the same.
    first: Vec<u32>,
    next: Vec<u32>,
    head: Vec<u32>,
    left: Vec<i64>,
    /// Arcs from here on are those of source and sink.
    ties: usize,
    level: Vec<u32>,
    at: Vec<u32>,
}

const NONE: u32 = u32::MAX;
const ALL: i64 = i64::MAX / 4;

impl<'a> Closure<'a> {
    /// Of `members`; what they come after and is neither a member nor `held` already keeps them out.
    pub fn new(members: &'a [usize], pieces: &'a [Piece], held: &[bool]) -> Self {
        let mut place = vec![NONE; pieces.len()];
        for (vertex, at) in members.iter().enumerate() {
            place[*at] = vertex as u32;
        }
        let vertices = members.len() + 2;
        let mut closure = Self {
            pieces,
            members,
            first: vec![NONE; vertices],
            next: Vec::new(),
            head: Vec::new(),
            left: Vec::new(),
            ties: 0,
            level: vec![NONE; vertices],
            at: vec![NONE; vertices],
        };
        let sink = members.len() as u32 + 1;
        for (vertex, at) in members.iter().enumerate() {
            for first in &pieces[*at].after {
                match place.get(*first) {
                    _ if held.get(*first) == Some(&true) => {}
                    Some(&tail) if tail != NONE => closure.tie(vertex as u32, tail),
                    _ => closure.tie(vertex as u32, sink),
                }
            }
        }
        closure.ties = closure.head.len();
        // Source and sink of each, in the order of the members.
        for vertex in 0..members.len() as u32 {
            closure.tie(members.len() as u32, vertex);
            closure.tie(vertex, sink);
        }
        closure
    }

    fn tie(&mut self, tail: u32, head: u32) {
        for (from, to) in [(tail, head), (head, tail)] {
            self.next.push(self.first[from as usize]);
            self.first[from as usize] = self.head.len() as u32;
            self.head.push(to);
            self.left.push(0);
        }
    }

    /// The least of the closures that are worth the most together, as places in the list of pieces; a piece may be
    /// worth less than nothing.
    pub fn best(&mut self, worth: impl Fn(&Piece) -> i64) -> Vec<usize> {
        for arc in (0..self.ties).step_by(2) {
            (self.left[arc], self.left[arc + 1]) = (ALL, 0);
        }
        for (vertex, at) in self.members.iter().enumerate() {
            let worth = worth(&self.pieces[*at]);
            let arc = self.ties + vertex * 4;
            (self.left[arc], self.left[arc + 1]) = (worth.max(0), 0);
            (self.left[arc + 2], self.left[arc + 3]) = ((-worth).max(0), 0);
        }
        let source = self.members.len();
        while self.measure(source) {
            self.at.copy_from_slice(&self.first);
            while self.push(source, ALL) > 0 {}
        }
        // What is still reached from the source.
        (0..self.members.len())
            .filter(|vertex| self.level[*vertex] != NONE)
            .map(|vertex| self.members[vertex])
            .collect()
    }

    /// Levels from the source over arcs that have something left; whether the sink is reached.
    fn measure(&mut self, source: usize) -> bool {
        self.level.fill(NONE);
        self.level[source] = 0;
        let mut queue = vec![source];
        let mut reached = 0;
        while let Some(vertex) = queue.get(reached).copied() {
            reached += 1;
            let mut arc = self.first[vertex];
            while arc != NONE {
                let head = self.head[arc as usize] as usize;
                if self.left[arc as usize] > 0 && self.level[head] == NONE {
                    self.level[head] = self.level[vertex] + 1;
                    queue.push(head);
                }
                arc = self.next[arc as usize];
            }
        }
        self.level[source + 1] != NONE
    }

    /// Sends at most `most` on to the sink; how much got there.
    fn push(&mut self, vertex: usize, most: i64) -> i64 {
        if vertex == self.members.len() + 1 {
            return most;
        }
        while self.at[vertex] != NONE {
            let arc = self.at[vertex] as usize;
            let head = self.head[arc] as usize;
            if self.left[arc] > 0 && self.level[head] == self.level[vertex] + 1 {
                let sent = self.push(head, most.min(self.left[arc]));
                if sent > 0 {
                    self.left[arc] -= sent;
                    self.left[arc ^ 1] += sent;
                    return sent;
                }
            }
            self.at[vertex] = self.next[arc];
        }
        0
    }
}
