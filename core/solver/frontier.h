// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/node_relaxation.h"

#include <algorithm>
#include <memory>
#include <vector>

namespace tarebowl::solver {

/// Open nodes, the least bound first, the older of equals. Nodes that are done are kept for reuse, so that a
/// search stops allocating once it runs.
class Frontier {
 public:
  using NodePtr = std::unique_ptr<Node>;

  [[nodiscard]] bool empty() const { return nodes_.empty(); }
  [[nodiscard]] std::size_t size() const { return nodes_.size(); }
  [[nodiscard]] double leastBound() const { return nodes_.empty() ? kInfinity : nodes_.front()->bound; }

  [[nodiscard]] NodePtr blank() {
    if (spare_.empty()) return std::make_unique<Node>();
    NodePtr node = std::move(spare_.back());
    spare_.pop_back();
    return node;
  }
  void recycle(NodePtr node) {
    if (spare_.size() < kMostSpare) spare_.push_back(std::move(node));
  }
  void push(NodePtr node) {
    node->order = ++pushed_;
    nodes_.push_back(std::move(node));
    std::push_heap(nodes_.begin(), nodes_.end(), isLater);
  }
  [[nodiscard]] NodePtr pop() {
    std::pop_heap(nodes_.begin(), nodes_.end(), isLater);
    NodePtr node = std::move(nodes_.back());
    nodes_.pop_back();
    return node;
  }

 private:
  static constexpr std::size_t kMostSpare = 256;
  static bool isLater(const NodePtr& a, const NodePtr& b) {
    return a->bound != b->bound ? a->bound > b->bound : a->order > b->order;
  }
  std::vector<NodePtr> nodes_;
  std::vector<NodePtr> spare_;
  std::int64_t pushed_ = 0;
};

}  // namespace tarebowl::solver
