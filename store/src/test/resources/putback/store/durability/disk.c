/*
 * Stands between a program and the disk, for files below one folder: writes down what the program asked of the disk and in which
 * order, and can answer as a full, broken or read-only disk would. Loaded with LD_PRELOAD.
 *
 *   PUTBACK_DISK         the folder, as the kernel names it
 *   PUTBACK_DISK_LOG     what is written down: operation, name, offset, length, bytes; numbers little end first
 *   PUTBACK_DISK_SAYS    a folder; a file in it called full, broken or read-only makes the disk say so
 */
#define _GNU_SOURCE
#include <dlfcn.h>
#include <errno.h>
#include <fcntl.h>
#include <limits.h>
#include <pthread.h>
#include <stdarg.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/syscall.h>
#include <unistd.h>

static pthread_mutex_t one_at_a_time = PTHREAD_MUTEX_INITIALIZER;
static const char *folder, *says;
static int log_file = -1;

static ssize_t (*real_write)(int, const void *, size_t);
static ssize_t (*real_pwrite)(int, const void *, size_t, off64_t);
static int (*real_truncate)(int, off64_t);
static int (*real_fsync)(int);
static int (*real_fdatasync)(int);
static int (*real_unlink)(const char *);
static int (*real_open)(const char *, int, ...);

__attribute__((constructor)) static void start(void) {
    real_write = dlsym(RTLD_NEXT, "write");
    real_pwrite = dlsym(RTLD_NEXT, "pwrite64");
    real_truncate = dlsym(RTLD_NEXT, "ftruncate64");
    real_fsync = dlsym(RTLD_NEXT, "fsync");
    real_fdatasync = dlsym(RTLD_NEXT, "fdatasync");
    real_unlink = dlsym(RTLD_NEXT, "unlink");
    real_open = dlsym(RTLD_NEXT, "open64");
    folder = getenv("PUTBACK_DISK");
    says = getenv("PUTBACK_DISK_SAYS");
    const char *log = getenv("PUTBACK_DISK_LOG");
    if (folder && log)
        log_file = real_open(log, O_WRONLY | O_CREAT | O_APPEND | O_CLOEXEC, 0600);
}

/* The name below the folder, empty for the folder itself; null for files elsewhere. */
static const char *below(const char *path) {
    size_t length = folder ? strlen(folder) : 0;
    if (!length || strncmp(path, folder, length) || (path[length] && path[length] != '/'))
        return NULL;
    return path[length] ? path + length + 1 : path + length;
}

static const char *name_of(int file, char *room) {
    char link[40];
    snprintf(link, sizeof link, "/proc/self/fd/%d", file);
    ssize_t length = readlink(link, room, PATH_MAX - 1);
    if (length < 0)
        return NULL;
    room[length] = 0;
    return below(room);
}

static int disk_is(const char *how) {
    char path[PATH_MAX];
    if (!says)
        return 0;
    snprintf(path, sizeof path, "%s/%s", says, how);
    return access(path, F_OK) == 0;
}

static void put(const void *bytes, size_t length) {
    while (length) {
        ssize_t done = syscall(SYS_write, log_file, bytes, length);
        if (done <= 0)
            abort();
        bytes = (const char *)bytes + done;
        length -= done;
    }
}

static void note(char what, const char *name, int64_t at, const void *bytes, int64_t length, int64_t carried) {
    if (log_file < 0)
        return;
    uint16_t named = strlen(name);
    put(&what, 1);
    put(&named, 2);
    put(name, named);
    put(&at, 8);
    put(&length, 8);
    put(bytes, carried);
}

ssize_t pwrite64(int file, const void *bytes, size_t length, off64_t at) {
    char room[PATH_MAX];
    const char *name = name_of(file, room);
    if (!name)
        return real_pwrite(file, bytes, length, at);
    if (disk_is("full")) {
        errno = ENOSPC;
        return -1;
    }
    pthread_mutex_lock(&one_at_a_time);
    ssize_t done = real_pwrite(file, bytes, length, at);
    if (done > 0)
        note('w', name, at, bytes, done, done);
    pthread_mutex_unlock(&one_at_a_time);
    return done;
}

ssize_t pwrite(int file, const void *bytes, size_t length, off_t at) {
    return pwrite64(file, bytes, length, at);
}

ssize_t write(int file, const void *bytes, size_t length) {
    char room[PATH_MAX];
    const char *name = name_of(file, room);
    if (!name)
        return real_write(file, bytes, length);
    if (disk_is("full")) {
        errno = ENOSPC;
        return -1;
    }
    pthread_mutex_lock(&one_at_a_time);
    ssize_t done = real_write(file, bytes, length);
    if (done > 0)
        note('w', name, lseek64(file, 0, SEEK_CUR) - done, bytes, done, done);
    pthread_mutex_unlock(&one_at_a_time);
    return done;
}

int ftruncate64(int file, off64_t length) {
    char room[PATH_MAX];
    const char *name = name_of(file, room);
    if (!name)
        return real_truncate(file, length);
    pthread_mutex_lock(&one_at_a_time);
    int done = real_truncate(file, length);
    if (!done)
        note('t', name, 0, NULL, length, 0);
    pthread_mutex_unlock(&one_at_a_time);
    return done;
}

int ftruncate(int file, off_t length) {
    return ftruncate64(file, length);
}

static int sync_with(int (*real)(int), int file) {
    char room[PATH_MAX];
    const char *name = name_of(file, room);
    if (!name)
        return real(file);
    if (disk_is("broken")) {
        errno = EIO;
        return -1;
    }
    pthread_mutex_lock(&one_at_a_time);
    int done = real(file);
    if (!done)
        note('s', name, 0, NULL, 0, 0);
    pthread_mutex_unlock(&one_at_a_time);
    return done;
}

int fsync(int file) {
    return sync_with(real_fsync, file);
}

int fdatasync(int file) {
    return sync_with(real_fdatasync, file);
}

int unlink(const char *path) {
    const char *name = below(path);
    if (!name)
        return real_unlink(path);
    pthread_mutex_lock(&one_at_a_time);
    int done = real_unlink(path);
    if (!done)
        note('u', name, 0, NULL, 0, 0);
    pthread_mutex_unlock(&one_at_a_time);
    return done;
}

int open64(const char *path, int how, ...) {
    mode_t mode = 0;
    if (how & O_CREAT) {
        va_list rest;
        va_start(rest, how);
        mode = va_arg(rest, mode_t);
        va_end(rest);
    }
    if (below(path) && (how & (O_WRONLY | O_RDWR | O_CREAT)) && disk_is("read-only")) {
        errno = EACCES;
        return -1;
    }
    return real_open(path, how, mode);
}

int open(const char *path, int how, ...) {
    mode_t mode = 0;
    if (how & O_CREAT) {
        va_list rest;
        va_start(rest, how);
        mode = va_arg(rest, mode_t);
        va_end(rest);
    }
    return open64(path, how, mode);
}
