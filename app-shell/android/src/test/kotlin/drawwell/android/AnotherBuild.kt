package drawwell.android

import com.sun.jna.NativeLibrary
import java.io.File

/**
 * The core as another build would have made it: the very library the tests run on, but for one of the numbers by
 * which the generated surface knows whether it was made from the same source. It is given back by a function that
 * does nothing else, so the copy has another number in that function's code.
 */
internal object AnotherBuild {
    private const val NUMBER = "uniffi_drawwell_checksum_method_drawwell_update"
    private const val CODE = 8
    private const val CODE_AND_WHAT_FOLLOWS = 64

    fun write(to: File): File {
        val library = File(System.getProperty("jna.library.path"), System.mapLibraryName("drawwell"))
        val function = NativeLibrary.getInstance(library.path).getFunction(NUMBER)
        val code = function.getByteArray(0, CODE_AND_WHAT_FOLLOWS)
        val number = function.invokeInt(emptyArray()) and 0xFFFF
        val bytes = library.readBytes()
        val place = bytes.placesOf(code).single()
        val (within, other) = said(number).zip(said(number xor 1))
            .firstNotNullOf { (is_, other) -> code.copyOf(CODE).placesOf(is_).singleOrNull()?.let { it to other } }
        other.copyInto(bytes, place + within)
        return to.apply { writeBytes(bytes) }
    }

    /** How code says a number: x86 as it is, ARM within the instruction that moves it to where answers are. */
    private fun said(number: Int) = listOf(little(number, 2), little(0x52800000 or (number shl 5), 4))

    private fun little(number: Int, size: Int) = ByteArray(size) { (number shr (8 * it)).toByte() }

    private fun ByteArray.placesOf(part: ByteArray): List<Int> =
        (0..size - part.size).filter { at -> part.indices.all { this[at + it] == part[it] } }
}
