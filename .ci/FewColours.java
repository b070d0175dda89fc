import java.awt.image.BufferedImage;
import java.awt.image.DataBuffer;
import java.awt.image.IndexColorModel;
import java.io.File;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;

/**
 * Cuts the white edges off a picture and keeps few of its colours, the frequent ones that are well apart; each pixel takes the nearest
 * of those. So a printed page takes a third of the bytes. Run by {@code .ci/pictures} as {@code java FewColours.java FROM.png TO.png}.
 */
final class FewColours {

    private static final int MOST = 96;
    /** Square of the least distance between two colours that are kept. */
    private static final int APART = 300;

    private static final int EDGE = 8;
    private static final int WHITE = 0xFFFFFFFF;

    private FewColours() {}

    public static void main(String[] files) throws IOException {
        BufferedImage picture = cut(ImageIO.read(new File(files[0])));
        int width = picture.getWidth();
        int[] pixels = picture.getRGB(0, 0, width, picture.getHeight(), null, 0, width);
        int[] kept = fewColours(pixels);
        IndexColorModel colours = new IndexColorModel(8, kept.length, kept, 0, false, -1, DataBuffer.TYPE_BYTE);
        BufferedImage result =
                new BufferedImage(width, picture.getHeight(), BufferedImage.TYPE_BYTE_INDEXED, colours);
        Map<Integer, Integer> nearest = new HashMap<>();
        for (int i = 0; i < pixels.length; i++) {
            int place = nearest.computeIfAbsent(pixels[i], pixel -> nearest(pixel, kept));
            result.getRaster().setSample(i % width, i / width, 0, place);
        }
        ImageIO.write(result, "png", new File(files[1]));
    }

    private static BufferedImage cut(BufferedImage page) {
        int[] across = IntStream.range(0, page.getWidth())
                .filter(x -> IntStream.range(0, page.getHeight()).anyMatch(y -> page.getRGB(x, y) != WHITE))
                .toArray();
        int[] down = IntStream.range(0, page.getHeight())
                .filter(y -> IntStream.range(0, page.getWidth()).anyMatch(x -> page.getRGB(x, y) != WHITE))
                .toArray();
        if (across.length == 0) {
            throw new IllegalArgumentException("The page is empty.");
        }
        int left = Math.max(0, across[0] - EDGE);
        int top = Math.max(0, down[0] - EDGE);
        int right = Math.min(page.getWidth(), across[across.length - 1] + 1 + EDGE);
        int bottom = Math.min(page.getHeight(), down[down.length - 1] + 1 + EDGE);
        return page.getSubimage(left, top, right - left, bottom - top);
    }

    /** Where colours are equally frequent the smaller number goes first, so that the same page gives the same bytes. */
    private static int[] fewColours(int[] pixels) {
        Map<Integer, Integer> counts = new HashMap<>();
        for (int pixel : pixels) {
            counts.merge(pixel, 1, Integer::sum);
        }
        List<Integer> kept = new ArrayList<>();
        counts.entrySet().stream()
                .sorted(Map.Entry.<Integer, Integer>comparingByValue()
                        .reversed()
                        .thenComparing(Map.Entry.comparingByKey()))
                .map(Map.Entry::getKey)
                .filter(colour -> kept.size() < MOST)
                .filter(colour -> kept.stream().allMatch(other -> distance(colour, other) >= APART))
                .forEachOrdered(kept::add);
        return kept.stream().mapToInt(Integer::intValue).toArray();
    }

    private static int nearest(int pixel, int[] kept) {
        int best = 0;
        for (int i = 1; i < kept.length; i++) {
            if (distance(pixel, kept[i]) < distance(pixel, kept[best])) {
                best = i;
            }
        }
        return best;
    }

    private static int distance(int one, int other) {
        int sum = 0;
        for (int shift = 0; shift <= 16; shift += 8) {
            int apart = (one >> shift & 255) - (other >> shift & 255);
            sum += apart * apart;
        }
        return sum;
    }
}
