// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/threaded_application.h"

// The linker gives every call of QMetaObject::invokeMethod to __wrap_…, and the library's own function the
// name
// __real_… (ld --wrap; tests/ui/CMakeLists.txt).
#ifdef TAREBOWL_THREADS_ARE_WATCHED
extern "C" {
// NOLINTBEGIN(bugprone-reserved-identifier)
bool __real__ZN11QMetaObject16invokeMethodImplEP7QObjectPN9QtPrivate15QSlotObjectBaseEN2Qt14ConnectionTypeEPv(
    QObject* receiver, QtPrivate::QSlotObjectBase* slot, Qt::ConnectionType type, void* result);

bool __wrap__ZN11QMetaObject16invokeMethodImplEP7QObjectPN9QtPrivate15QSlotObjectBaseEN2Qt14ConnectionTypeEPv(
    QObject* receiver, QtPrivate::QSlotObjectBase* slot, Qt::ConnectionType type, void* result) {
  __tsan_release(receiver);
  return __real__ZN11QMetaObject16invokeMethodImplEP7QObjectPN9QtPrivate15QSlotObjectBaseEN2Qt14ConnectionTypeEPv(
      receiver, slot, type, result);
}
// NOLINTEND(bugprone-reserved-identifier)
}
#endif
