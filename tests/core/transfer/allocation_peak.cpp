// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/transfer/allocation_peak.h"

#include <malloc.h>
#include <sqlite3.h>

#include <atomic>
#include <cstdlib>
#include <new>

namespace {

std::atomic<std::size_t> held{0};
std::atomic<std::size_t> peak{0};

void* counted(void* memory) {
  if (memory == nullptr) throw std::bad_alloc();
  const std::size_t now = held += malloc_usable_size(memory);
  std::size_t before = peak;
  while (before < now && !peak.compare_exchange_weak(before, now)) {
  }
  return memory;
}

void release(void* memory) {
  held -= malloc_usable_size(memory);
  std::free(memory);
}

}  // namespace

void* operator new(std::size_t size) {
  return counted(std::malloc(size == 0 ? 1 : size));
}
// The sanitizers have one of their own that does not come here: std::stable_sort asks it for its buffer.
void* operator new(std::size_t size, const std::nothrow_t& /*nothrow*/) noexcept {
  try {
    return ::operator new(size);
  } catch (const std::bad_alloc&) {
    return nullptr;
  }
}
void* operator new(std::size_t size, std::align_val_t alignment) {
  const auto step = static_cast<std::size_t>(alignment);
  return counted(std::aligned_alloc(step, (size + step - 1) / step * step));
}
void operator delete(void* memory) noexcept {
  release(memory);
}
void operator delete(void* memory, std::size_t /*size*/) noexcept {
  release(memory);
}
void operator delete(void* memory, std::align_val_t /*alignment*/) noexcept {
  release(memory);
}
void operator delete(void* memory, std::size_t /*size*/, std::align_val_t /*alignment*/) noexcept {
  release(memory);
}

namespace tarebowl::transfer {

AllocationPeak::AllocationPeak()
    : programBefore_(held), engineBefore_(static_cast<std::size_t>(sqlite3_memory_used())) {
  peak = programBefore_;
  (void)sqlite3_memory_highwater(1);
}

std::size_t AllocationPeak::ofProgram() const {
  return peak - programBefore_;
}

std::size_t AllocationPeak::ofEngine() const {
  return static_cast<std::size_t>(sqlite3_memory_highwater(0)) - engineBefore_;
}

}  // namespace tarebowl::transfer
