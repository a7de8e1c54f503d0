// SPDX-License-Identifier: BSL-1.0
/// @file
/// The heads of a network of straight links, by eliminating one junction after the other.
///
/// A junction with links of conductance w to its neighbours and g to fixed heads is replaced by links between its
/// neighbours (star to mesh): only sums and products of positive numbers, so conductances that differ by twenty orders
/// of magnitude lose no digits. Junctions with one neighbour go first, which solves a tree without any new link; what
/// is left, the loops, goes by least degree.
#pragma once

#include <cstddef>
#include <vector>

namespace tankwright::plumbing::detail {

class elimination {
 public:
  static constexpr int none = -1;

  /// A junction, or behind those a fixed head.
  struct node {
    double ground{};  // conductance to fixed heads
    double inflow{};
    double head{};
    int neighbours = 0;  // that are eliminated later
    int ends = 0;        // of links that meet here
    int open_ends = 0;   // while ordering: links to junctions not yet eliminated
    int links = 0;       // while ordering: their numbers, by exclusive or
  };
  struct branch {  // from a junction to one that is eliminated later
    double conductance{};
    double share{};  // of the inflow of the junction that leaves this way
    int to = none;
  };

  std::vector<node> nodes{};
  std::vector<branch> branches{};

  /// Find the order. Nodes below `count` are junctions, the others have their heads already. `Link` has ends `from` and
  /// `to`, and gets the number of its branch.
  template <class Link>
  void prepare(int count, std::vector<Link>& links) {
    const auto n = static_cast<std::size_t>(count);
    branches.clear();
    branches.reserve(n);
    order_.clear();
    order_.reserve(n);
    meshed_.clear();
    for (std::size_t i = 0; i < links.size(); ++i) {
      node& from = nodes[static_cast<std::size_t>(links[i].from)];
      node& to = nodes[static_cast<std::size_t>(links[i].to)];
      ++from.ends;
      ++to.ends;
      links[i].branch = none;
      if (links[i].from >= count || links[i].to >= count) continue;
      ++from.open_ends;
      ++to.open_ends;
      from.links ^= static_cast<int>(i);
      to.links ^= static_cast<int>(i);
    }
    for (int j = 0; j < count; ++j) {
      if (nodes[static_cast<std::size_t>(j)].open_ends <= 1) order_.push_back(j);
    }
    for (std::size_t at = 0; at < order_.size(); ++at) {
      node& leaf = nodes[static_cast<std::size_t>(order_[at])];
      if (leaf.open_ends == 0) continue;
      Link& k = links[static_cast<std::size_t>(leaf.links)];
      const int to = k.from == order_[at] ? k.to : k.from;
      k.branch = static_cast<int>(branches.size());
      branches.emplace_back().to = to;
      leaf.neighbours = 1;
      node& next = nodes[static_cast<std::size_t>(to)];
      next.links ^= leaf.links;
      if (--next.open_ends == 1) order_.push_back(to);
    }
    if (order_.size() < n) order_loops(n, links);
  }

  /// Whether the last solution had junctions that nothing leads to a fixed head from.
  [[nodiscard]] bool has_floating_part() const noexcept { return floating_; }

  /// Start a new set of links.
  void clear() noexcept {
    for (node& j : nodes) j.ground = j.inflow = 0.0;
    for (branch& b : branches) b.conductance = 0.0;
  }
  /// A link that carries `carried + conductance (H_from - H_to)`.
  template <class Link>
  void add(const Link& k, double carried, double conductance) noexcept {
    node& from = nodes[static_cast<std::size_t>(k.from)];
    node& to = nodes[static_cast<std::size_t>(k.to)];
    if (k.branch != none) {
      branches[static_cast<std::size_t>(k.branch)].conductance += conductance;
      from.inflow -= carried;
      to.inflow += carried;
    } else {  // one end is fixed; what the fixed one gets does not matter
      from.ground += conductance;
      to.ground += conductance;
      from.inflow += conductance * to.head - carried;
      to.inflow += conductance * from.head + carried;
    }
  }

  /// Heads of all junctions. Where nothing leads to a fixed head, heads are over that of the last junction of the part.
  void solve() noexcept {
    branch* next = branches.data();
    const int* target = meshed_.data();
    floating_ = false;
    for (const int number : order_) {
      node& j = nodes[static_cast<std::size_t>(number)];
      branch* const end = next + j.neighbours;
      double all = j.ground;
      for (const branch* b = next; b != end; ++b) all += b->conductance;
      const double per = all > 0.0 ? 1.0 / all : 0.0;
      floating_ |= per == 0.0;
      for (branch* b = next; b != end; ++b) {
        b->share = b->conductance * per;
        node& other = nodes[static_cast<std::size_t>(b->to)];
        other.ground += b->share * j.ground;
        other.inflow += b->share * j.inflow;
        for (const branch* c = next; c != b; ++c) {
          branches[static_cast<std::size_t>(*target++)].conductance += b->share * c->conductance;
        }
      }
      j.head = j.inflow * per;
      next = end;
    }
    for (std::size_t i = order_.size(); i-- > 0;) {
      node& j = nodes[static_cast<std::size_t>(order_[i])];
      for (int b = 0; b < j.neighbours; ++b) {
        --next;
        j.head += next->share * nodes[static_cast<std::size_t>(next->to)].head;
      }
    }
  }

 private:
  /// What leaves do not reach, by least degree.
  template <class Link>
  void order_loops(std::size_t n, std::vector<Link>& links) {
    std::vector<int> place(n, none);  // in the order
    for (std::size_t i = 0; i < order_.size(); ++i) place[static_cast<std::size_t>(order_[i])] = static_cast<int>(i);
    std::vector<std::vector<int>> around(n);
    const auto join = [&](int a, int b) {
      auto& list = around[static_cast<std::size_t>(a)];
      for (const int other : list) {
        if (other == b) return;
      }
      list.push_back(b);
      around[static_cast<std::size_t>(b)].push_back(a);
    };
    const int count = static_cast<int>(n);
    const auto in_loops = [&](const Link& k) { return k.from < count && k.to < count && k.branch == none; };
    for (const Link& k : links) {
      if (in_loops(k)) join(k.from, k.to);
    }
    std::vector<std::vector<int>> by_degree(n);  // a junction stands there once for each degree it has had
    const auto file = [&](int j) { by_degree[around[static_cast<std::size_t>(j)].size()].push_back(j); };
    for (int j = count; j-- > 0;) {
      if (place[static_cast<std::size_t>(j)] == none) file(j);
    }
    std::vector<std::size_t> first(n);  // branch of each junction
    const std::size_t leaves = order_.size();
    while (order_.size() < n) {
      std::size_t degree{};
      while (by_degree[degree].empty()) ++degree;
      const int j = by_degree[degree].back();
      const auto at = static_cast<std::size_t>(j);
      by_degree[degree].pop_back();
      if (place[at] != none || around[at].size() != degree) continue;
      place[at] = static_cast<int>(order_.size());
      order_.push_back(j);
      first[at] = branches.size();
      nodes[at].neighbours = static_cast<int>(degree);
      for (const int other : around[at]) {
        branches.emplace_back().to = other;
        auto& list = around[static_cast<std::size_t>(other)];
        for (std::size_t i = 0;; ++i) {
          if (list[i] != j) continue;
          list[i] = list.back();
          list.pop_back();
          break;
        }
      }
      for (const int& a : around[at]) {
        for (const int* b = around[at].data(); b != &a; ++b) join(a, *b);
      }
      for (const int other : around[at]) file(other);
    }
    const auto branch_between = [&](int a, int b) {
      if (place[static_cast<std::size_t>(a)] > place[static_cast<std::size_t>(b)]) std::swap(a, b);
      std::size_t i = first[static_cast<std::size_t>(a)];
      while (branches[i].to != b) ++i;
      return static_cast<int>(i);
    };
    for (Link& k : links) {
      if (in_loops(k)) k.branch = branch_between(k.from, k.to);
    }
    for (std::size_t i = leaves; i < n; ++i) {
      const auto at = static_cast<std::size_t>(order_[i]);
      const branch* const own = branches.data() + first[at];
      for (const branch* b = own; b != own + nodes[at].neighbours; ++b) {
        for (const branch* c = own; c != b; ++c) meshed_.push_back(branch_between(b->to, c->to));
      }
    }
  }

  std::vector<int> order_{};
  std::vector<int> meshed_{};  // branch that each pair of neighbours adds to, in the order of use
  bool floating_{};
};

}  // namespace tankwright::plumbing::detail
