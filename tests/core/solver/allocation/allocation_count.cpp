// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/solver/allocation/allocation_count.h"

#include <atomic>
#include <cstdlib>
#include <new>

namespace {
std::atomic<long> allocations = 0;
}

extern "C" {
void* __real_malloc(std::size_t size);                // NOLINT: the linker's names
void* __real_realloc(void* block, std::size_t size);  // NOLINT
void* __wrap_malloc(std::size_t size) {               // NOLINT
  ++allocations;
  return __real_malloc(size);
}
void* __wrap_realloc(void* block, std::size_t size) {  // NOLINT
  ++allocations;
  return __real_realloc(block, size);
}
}

void* operator new(std::size_t size) {
  if (void* const block = std::malloc(size)) return block;
  throw std::bad_alloc();
}
void* operator new(std::size_t size, const std::nothrow_t& /*nothrow*/) noexcept {
  return std::malloc(size);
}
void operator delete(void* block) noexcept {
  std::free(block);
}
void operator delete(void* block, std::size_t /*size*/) noexcept {
  std::free(block);
}

namespace tarebowl::testing {

long allocationCount() {
  return allocations;
}

}  // namespace tarebowl::testing
