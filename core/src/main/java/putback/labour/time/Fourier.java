package putback.labour.time;

/** Adds two long distributions by fast Fourier transform, radix 2; to about 1e-16 of the largest mass. */
final class Fourier {
    private Fourier() {}

    /** The product of two polynomials, by the imaginary part of the square of a + ib, which is twice their product. */
    static double[] product(double[] a, double[] b) {
        int length = a.length + b.length - 1;
        int size = Integer.highestOneBit(Math.max(2, length - 1)) << 1;
        double[] real = java.util.Arrays.copyOf(a, size);
        double[] imaginary = java.util.Arrays.copyOf(b, size);
        transform(real, imaginary);
        for (int i = 0; i < size; i++) {
            double square = real[i] * real[i] - imaginary[i] * imaginary[i];
            imaginary[i] = 2 * real[i] * imaginary[i];
            real[i] = square;
        }
        // Swapped real and imaginary parts transform backwards.
        transform(imaginary, real);
        double[] product = new double[length];
        for (int i = 0; i < length; i++) {
            product[i] = imaginary[i] / (2.0 * size);
        }
        return product;
    }

    private static void transform(double[] real, double[] imaginary) {
        int size = real.length;
        reorder(real, imaginary);
        double[] cosine = new double[size / 2];
        double[] sine = new double[size / 2];
        for (int i = 0; i < size / 2; i++) {
            cosine[i] = Math.cos(2 * Math.PI * i / size);
            sine[i] = -Math.sin(2 * Math.PI * i / size);
        }
        for (int half = 1; half < size; half *= 2) {
            int stride = size / (2 * half);
            for (int start = 0; start < size; start += 2 * half) {
                for (int i = start; i < start + half; i++) {
                    double turn = cosine[(i - start) * stride];
                    double turned = sine[(i - start) * stride];
                    double x = real[i + half] * turn - imaginary[i + half] * turned;
                    double y = real[i + half] * turned + imaginary[i + half] * turn;
                    real[i + half] = real[i] - x;
                    imaginary[i + half] = imaginary[i] - y;
                    real[i] += x;
                    imaginary[i] += y;
                }
            }
        }
    }

    private static void reorder(double[] real, double[] imaginary) {
        int shift = Integer.numberOfLeadingZeros(real.length) + 1;
        for (int i = 0; i < real.length; i++) {
            int other = Integer.reverse(i) >>> shift;
            if (i < other) {
                double kept = real[i];
                real[i] = real[other];
                real[other] = kept;
                kept = imaginary[i];
                imaginary[i] = imaginary[other];
                imaginary[other] = kept;
            }
        }
    }
}
