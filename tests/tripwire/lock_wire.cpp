// SPDX-License-Identifier: GPL-3.0-or-later
#include "tripwire/next.h"
#include "tripwire/tripwire.h"

#include <pthread.h>
#include <semaphore.h>

using piolo::tripwire::Next;
using piolo::tripwire::note;
using piolo::tripwire::Trip;

// One wire: takes and returns the same as the function behind it.
#define PIOLO_WIRE(Name, Takes, Gives, ...)                                                                  \
    extern "C" int Name Takes __VA_ARGS__ {                                                                  \
        static constinit Next<int Takes> next(#Name);                                                        \
        note(Trip::lock);                                                                                    \
        return (*next)Gives;                                                                                 \
    }

PIOLO_WIRE(pthread_mutex_lock, (pthread_mutex_t * lock), (lock), noexcept)
PIOLO_WIRE(pthread_mutex_trylock, (pthread_mutex_t * lock), (lock), noexcept)
PIOLO_WIRE(pthread_mutex_unlock, (pthread_mutex_t * lock), (lock), noexcept)
PIOLO_WIRE(pthread_mutex_timedlock, (pthread_mutex_t * lock, const timespec* until), (lock, until), noexcept)
PIOLO_WIRE(pthread_spin_lock, (pthread_spinlock_t * lock), (lock), noexcept)
PIOLO_WIRE(pthread_rwlock_rdlock, (pthread_rwlock_t * lock), (lock), noexcept)
PIOLO_WIRE(pthread_rwlock_wrlock, (pthread_rwlock_t * lock), (lock), noexcept)
PIOLO_WIRE(pthread_rwlock_tryrdlock, (pthread_rwlock_t * lock), (lock), noexcept)
PIOLO_WIRE(pthread_rwlock_trywrlock, (pthread_rwlock_t * lock), (lock), noexcept)
PIOLO_WIRE(pthread_rwlock_unlock, (pthread_rwlock_t * lock), (lock), noexcept)
PIOLO_WIRE(pthread_cond_wait, (pthread_cond_t * cond, pthread_mutex_t* lock), (cond, lock))
PIOLO_WIRE(pthread_cond_timedwait, (pthread_cond_t * cond, pthread_mutex_t* lock, const timespec* until),
           (cond, lock, until))
PIOLO_WIRE(pthread_cond_clockwait,
           (pthread_cond_t * cond, pthread_mutex_t* lock, clockid_t clock, const timespec* until),
           (cond, lock, clock, until))
PIOLO_WIRE(pthread_cond_signal, (pthread_cond_t * cond), (cond), noexcept)
PIOLO_WIRE(pthread_cond_broadcast, (pthread_cond_t * cond), (cond), noexcept)
PIOLO_WIRE(sem_wait, (sem_t * semaphore), (semaphore))
PIOLO_WIRE(sem_trywait, (sem_t * semaphore), (semaphore), noexcept)
PIOLO_WIRE(sem_timedwait, (sem_t * semaphore, const timespec* until), (semaphore, until))
PIOLO_WIRE(sem_post, (sem_t * semaphore), (semaphore), noexcept)

// The guard of a static inside a function: a lock that is not in the source.
extern "C" int __cxa_guard_acquire(void* guard) {
    static constinit Next<int(void*)> next("__cxa_guard_acquire");
    note(Trip::lock);
    return (*next)(guard);
}
