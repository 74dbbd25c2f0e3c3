package drawwell.desktop

import drawwell.ui.look.KeptLook
import java.io.File

/** Where the platform keeps a person's data. */
class DataFolder(private val folder: File) {
    val record: File get() = folder.resolve("record.drawwell")

    /** Where a consultant's desk keeps its caseload: a folder beside this one, so that neither is taken for the other. */
    fun caseload() = DataFolder(folder.resolveSibling("${folder.name}-caseload"))

    val path: String get() = folder.path

    /** Where the folder that is watched is kept in mind. */
    val watched: File get() = folder.resolve("watched")

    /**
     * The name that a version before gave this device; none otherwise, and the core names it after its key. It is of
     * the file that lies here: where that is gone, a new one would give out the numbers of the old again.
     */
    fun device(): String =
        folder.resolve("device").takeIf { it.exists() && holdsARecord() }?.readText()?.trim().orEmpty()

    private fun holdsARecord() = folder.list().orEmpty().any { it.endsWith(".drawwell") }

    /** The look of the first frame, before the record can say. */
    fun look(): KeptLook = folder.resolve("look").let { file -> KeptLook(file::readText, file::writeText) }

    companion object {
        /** For a record of one's own choosing, its device lies beside it. */
        fun beside(record: File) = DataFolder(record.absoluteFile.parentFile)

        fun ofPlatform(
            system: String = System.getProperty("os.name"),
            home: String = System.getProperty("user.home"),
            variable: (String) -> String? = System::getenv,
        ): DataFolder = DataFolder(
            when {
                system.startsWith("Windows") -> File(variable("APPDATA") ?: "$home/AppData/Roaming", "Drawwell")
                system.startsWith("Mac") -> File(home, "Library/Application Support/Drawwell")
                else -> File(variable("XDG_DATA_HOME")?.takeIf { it.startsWith("/") } ?: "$home/.local/share", "drawwell")
            },
        )
    }
}
