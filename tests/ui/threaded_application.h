// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QApplication>

/// Qt is not compiled with the thread sanitizer, which therefore does not see that what one thread handed to
/// another by QMetaObject::invokeMethod was done before it is delivered there. It is told here, receiver by
/// receiver: the call releases (threaded_application.cpp), the delivery acquires. All else that two threads
/// touch is still reported. Without the sanitizer it is a QApplication.
#if defined(__has_feature)
#if __has_feature(thread_sanitizer)
#define TAREBOWL_THREADS_ARE_WATCHED
#endif
#endif

#ifdef TAREBOWL_THREADS_ARE_WATCHED
#include <sanitizer/tsan_interface.h>

namespace tarebowl::ui {

class ThreadedApplication : public QApplication {
 public:
  using QApplication::QApplication;
  bool notify(QObject* receiver, QEvent* event) override {
    __tsan_acquire(receiver);
    return QApplication::notify(receiver, event);
  }
};

}  // namespace tarebowl::ui
#else
namespace tarebowl::ui {
using ThreadedApplication = QApplication;
}
#endif
