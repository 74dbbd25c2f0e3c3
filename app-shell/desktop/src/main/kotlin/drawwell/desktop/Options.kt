package drawwell.desktop

import java.io.File
import java.time.ZonedDateTime

/** What the program was started with. */
data class Options(
    /** The record to open instead of the person's own. */
    val record: File? = null,
    /** A moment that the clock starts at. */
    val time: ZonedDateTime? = null,
    /** A folder to draw every screen into, without a window. */
    val pictures: File? = null,
    /** Which pictures are to be drawn, where not all are: whole names, or how names of screens begin. */
    val only: List<String> = emptyList(),
    /** Whether to tell how long the start took, and close. */
    val measure: Boolean = false,
    /** Whether to draw with more contrast, where the desk can't say that it wants it. */
    val contrast: Boolean = false,
    /** Whether the consultant's window is opened instead of the parent's. */
    val caseload: Boolean = false,
    /** The folder of the caseload instead of the usual one. */
    val caseloadFolder: File? = null,
    /** A file to bring in: one that was opened with this program. */
    val file: File? = null,
) {
    companion object {
        private const val KNOWN = "--record, --caseload, --time, --pictures, --only, --measure, --contrast, and a file to open"

        fun read(arguments: Array<String>): Options {
            var options = Options()
            val left = ArrayDeque(arguments.toList())
            fun value(name: String) = requireNotNull(left.removeFirstOrNull()) { "$name needs a value" }
            while (left.isNotEmpty()) {
                options = when (val name = left.removeFirst()) {
                    "--record" -> options.copy(record = File(value(name)))
                    "--caseload" -> options.copy(
                        caseload = true,
                        caseloadFolder = left.firstOrNull()?.takeUnless { it.startsWith("--") }?.let { File(left.removeFirst()) },
                    )
                    "--time" -> options.copy(time = Moments.read(value(name)))
                    "--pictures" -> options.copy(pictures = File(value(name)))
                    "--only" -> options.copy(only = value(name).split(','))
                    "--measure" -> options.copy(measure = true)
                    "--contrast" -> options.copy(contrast = true)
                    else -> {
                        require(!name.startsWith("--")) { "unknown: $name (known: $KNOWN)" }
                        options.copy(file = File(name))
                    }
                }
            }
            return options
        }
    }
}
