package drawwell.desktop.caseload

import java.io.File
import kotlin.time.Duration
import kotlin.time.Duration.Companion.seconds
import kotlinx.coroutines.Dispatchers
import kotlinx.coroutines.delay
import kotlinx.coroutines.withContext

/**
 * A folder that is looked at now and then: each new file in it is told of once, when it is whole. The choice, and
 * which files are no news, are kept in mind in a file of one's own, so that what comes while the program is closed
 * is told of at its next start.
 */
class FolderWatch(private val mind: File) {
    /** A file as it was seen; another of the same name is another. */
    private data class Seen(val name: String, val size: Long, val changed: Long) {
        override fun toString() = "$size $changed $name"
    }

    private var folder: File? = null
    private var known: Set<Seen> = emptySet()
    private var growing: Set<Seen> = emptySet()

    init {
        runCatching { remember(mind.readLines()) }
    }

    /** What the folder is called, or nothing where none is watched. */
    val name: String @Synchronized get() = folder?.let { it.name.ifEmpty { it.path } }.orEmpty()

    /** Watches a folder. What lies in it now is no news. */
    @Synchronized
    fun choose(folder: File) {
        this.folder = folder
        known = files(folder).orEmpty().keys
        growing = emptySet()
        keep()
    }

    @Synchronized
    fun leave() {
        folder = null
        known = emptySet()
        growing = emptySet()
        mind.delete()
    }

    /** What is new, and was the same when it was looked at last: nobody writes to it any more. */
    @Synchronized
    fun look(): List<File> {
        val folder = folder ?: return emptyList()
        // A folder that is not there now, such as one on a stick, is none that was emptied.
        val found = files(folder) ?: return emptyList()
        val fresh = found.keys - known
        val whole = fresh.filter { it in growing && it.size > 0 }
        growing = fresh - whole.toSet()
        val kept = known.intersect(found.keys) + whole
        if (kept != known) {
            known = kept
            keep()
        }
        return whole.sortedBy { it.changed }.map(found::getValue)
    }

    /** Looks until it is cancelled. */
    suspend fun run(every: Duration = EVERY, importQuietly: (File) -> Unit) {
        while (true) {
            withContext(Dispatchers.IO) { look() }.forEach(importQuietly)
            delay(every)
        }
    }

    private fun files(folder: File): Map<Seen, File>? =
        folder.listFiles()
            ?.filter { it.isFile && !it.isHidden && it.extension !in HALF_MADE }
            ?.associateBy { Seen(it.name, it.length(), it.lastModified()) }

    private fun keep() {
        val folder = folder ?: return
        mind.absoluteFile.parentFile.mkdirs()
        runCatching { mind.writeText((listOf(folder.path) + known.map { it.toString() }).joinToString("\n")) }
    }

    private fun remember(lines: List<String>) {
        folder = lines.firstOrNull()?.takeIf { it.isNotBlank() }?.let(::File)
        known = lines.drop(1).mapNotNull { line ->
            val (size, changed, name) = line.split(" ", limit = 3).takeIf { it.size == 3 } ?: return@mapNotNull null
            Seen(name, size.toLongOrNull() ?: return@mapNotNull null, changed.toLongOrNull() ?: return@mapNotNull null)
        }.toSet()
    }

    companion object {
        val EVERY = 2.seconds

        /** What programs that load files call those which are not whole yet. */
        private val HALF_MADE = setOf("part", "crdownload", "download", "tmp")
    }
}
