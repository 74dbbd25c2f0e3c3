package drawwell.ui

import com.sun.jna.Library
import com.sun.jna.Native
import org.junit.Assert.assertTrue
import org.junit.Assume.assumeTrue
import java.io.File
import java.nio.file.Files

/**
 * A disk that is full for a record that is open. Every write to the record goes through its `-wal` file; while the
 * disk is full, that open file is `/dev/full` instead, where the system itself refuses whatever is written as it does
 * on a full disk. Nothing is mounted and no leave is needed, only Linux. What is read from there is nothing, so the
 * record has to be opened afresh before, when all of it lies in the record's own file.
 */
internal object FullDisk {
    private const val READ_AND_WRITE = 2
    private val device = File("/dev/full")
    private val openFiles = File("/proc/self/fd")

    interface System : Library {
        fun open(path: String, flags: Int): Int
        fun dup(file: Int): Int
        fun dup2(from: Int, to: Int): Int
        fun close(file: Int): Int
    }

    fun during(record: File, deed: () -> Unit) {
        assumeTrue("a full disk can be had on Linux only", device.exists() && openFiles.exists())
        val system = Native.load("c", System::class.java)
        val files = open(record.resolveSibling("${record.name}-wal"))
        assertTrue("the record is not open", files.isNotEmpty())
        val kept = files.associateWith(system::dup)
        val full = system.open(device.path, READ_AND_WRITE)
        try {
            files.forEach { system.dup2(full, it) }
            deed()
        } finally {
            kept.forEach { (file, copy) -> system.dup2(copy, file) }
            (kept.values + full).forEach { system.close(it) }
        }
    }

    /** The numbers under which this process holds a file open. */
    private fun open(file: File): List<Int> = openFiles.listFiles().orEmpty()
        .filter { runCatching { Files.readSymbolicLink(it.toPath()).toString() }.getOrNull() == file.canonicalPath }
        .map { it.name.toInt() }
}
