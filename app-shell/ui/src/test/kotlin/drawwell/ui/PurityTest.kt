package drawwell.ui

import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Test
import java.io.File

/** The screens are drawn on two hosts, so they know neither. */
class PurityTest {
    private val sources = File("src/main/kotlin").walk().filter { it.extension == "kt" }.toList()

    @Test
    fun noScreenKnowsAHost() {
        assertTrue(sources.size > 30)
        val found = sources.flatMap { file ->
            file.readLines().filter { line -> STRANGERS.any { line.contains(it) } }.map { "${file.name}: $it" }
        }
        assertEquals(emptyList<String>(), found)
    }

    private companion object {
        val STRANGERS = listOf(
            "java.awt", "javax.swing", "androidx.compose.ui.window", "androidx.compose.desktop", "java.io",
            "java.nio", "java.net", "java.time", "androidx.compose.material", "com.sun.jna", "android.",
        )
    }
}
